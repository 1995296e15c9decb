package boltlore.handbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import boltlore.cli.CommandModel;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

class ManPageTest {

    @TempDir
    static Path folder;

    @BeforeAll
    static void write() throws IOException {
        ManPage.writeAll(folder.resolve("man"));
    }

    @Test
    void every_command_has_a_page_that_names_its_options() throws IOException {
        for (CommandLine command : ManPage.all()) {
            String page = Files.readString(folder.resolve("man/" + ManPage.name(command.getCommandSpec()) + ".1"));
            for (OptionSpec option : command.getCommandSpec().options()) {
                assertThat(page).contains("\\fB" + ManPage.text(option.longestName()) + "\\fR");
            }
        }
        assertThat(ManPage.all())
                .hasSizeGreaterThan(CommandModel.whole().getSubcommands().size());
    }

    @Test
    void the_formatter_accepts_every_page_without_a_warning() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/groff")));
        List<String> command = new ArrayList<>(List.of("groff", "-man", "-ww", "-Kutf8", "-Tutf8", "-z"));
        try (Stream<Path> pages = Files.list(folder.resolve("man"))) {
            pages.sorted().map(Path::toString).forEach(command::add);
        }

        assertThat(said(command)).isEmpty();
    }

    @Test
    void a_page_that_is_wrong_would_be_told() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/groff")));
        Path page = Files.writeString(folder.resolve("wrong.1"), ".TH X 1\n.SH NAME\nx \\- y\n.NOTHING\n\\*[none]\n");

        assertThat(said(List.of("groff", "-man", "-ww", "-Tutf8", "-z", page.toString())))
                .contains("warning");
    }

    @Test
    void letters_that_the_formatter_takes_for_itself_are_written_so_that_they_print() {
        assertThat(ManPage.text("a-b \\ 'c' °")).isEqualTo("a\\-b \\(rs \\(aqc\\(aq \\[u00B0]");
    }

    @Test
    void zsh_reads_its_completion_and_finds_commands_options_and_values() throws Exception {
        String script = ZshCompletion.of(CommandModel.whole());
        Path file =
                Files.writeString(Files.createDirectories(folder.resolve("zsh")).resolve("_boltlore"), script);

        assertThat(script).startsWith("#compdef boltlore").contains("'--all[Write the sheets", "'compare:Say what is");
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/zsh")));
        assertThat(said(List.of("zsh", "-n", file.toString()))).isEmpty();
        String asked = """
                zmodload zsh/zpty; zpty z zsh -f -i
                zpty -w z "PS1=; fpath=(%s \\$fpath); autoload -Uz compinit; compinit -D -u; unsetopt zle_bracketed_paste; print re''ady"
                zpty -r z seen '*ready*'
                zpty -n -w z $'boltlore order qu\\t'; sleep 1
                zpty -n -w z $'X --rea\\t'; sleep 1; zpty -n -w z $'\\n'
                sleep 1; while zpty -r -t z part; do print -r -- "$part"; done; zpty -d z
                """.formatted(file.getParent());
        assertThat(said(List.of("zsh", "-f", "-c", asked))
                        .replaceAll("\\p{Cntrl}(\\[[0-9;?]*[A-Za-z])?", "")
                        .replaceAll(" +", " "))
                .contains("order quote X --reason");
    }

    @Test
    void bash_completes_commands_and_options() throws Exception {
        Path file =
                Files.writeString(folder.resolve("boltlore.bash"), AutoComplete.bash("boltlore", CommandModel.whole()));
        String asked =
                "source " + file + "; COMP_WORDS=(boltlore order qu); COMP_CWORD=2; COMP_LINE='boltlore order qu';"
                        + " COMP_POINT=17; _complete_boltlore; echo \"${COMPREPLY[@]}\"";

        assertThat(said(List.of("bash", "-c", asked))).contains("quote");
    }

    private static String said(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        process.getOutputStream().close();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return said;
    }
}
