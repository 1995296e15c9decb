package boltlore.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** What the handbook and the README tell people to type, and what they say that the program answers. */
class WrittenCommandsTest {

    private static final Pattern IN_THE_TEXT = Pattern.compile("`boltlore ([^`]*)`");
    private static final Pattern SHELL = Pattern.compile("(?m)^```sh\\n(.*?)^```$", Pattern.DOTALL);
    private static final String NAME = "[a-z][a-z-]+";

    @TempDir
    private Path folder;

    static List<Path> texts() throws IOException {
        try (Stream<Path> pages = Files.list(Handbook.SOURCES)) {
            return Stream.concat(pages, Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md")))
                    .filter(each -> each.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("texts")
    void each_command_exists_with_its_options(Path text) throws IOException {
        assertThat(unknown(Files.readString(text))).isEmpty();
    }

    @Test
    void a_command_or_option_that_does_not_exist_is_noticed() {
        assertThat(unknown("`boltlore kitt ORDER`, `boltlore kit --al ORDER`, `boltlore order quotes NUMBER`"))
                .containsExactly("kitt", "kit --al", "order quotes");
        assertThat(unknown("`boltlore kit --all ORDER`, `boltlore order quote NUMBER`, `boltlore`"))
                .isEmpty();
    }

    /** As the program itself would read them. */
    @ParameterizedTest
    @MethodSource("texts")
    void each_line_for_the_shell_is_understood(Path text) throws IOException {
        assertThat(refused(Files.readString(text))).isEmpty();
    }

    @Test
    void a_line_that_lacks_a_word_is_noticed() {
        assertThat(refused("```sh\nboltlore film-check ORDER\n```\n"))
                .singleElement()
                .asString()
                .contains("--record");
        assertThat(refused("```sh\nboltlore film-check ORDER --record film.csv\n```\n"))
                .isEmpty();
    }

    /** Where one is not, the renewed page lies in target/handbook; 'mvn exec:exec@renew-handbook' renews all in place. */
    @ParameterizedTest
    @MethodSource("texts")
    void each_answer_that_is_shown_is_what_the_demo_gives(Path text) throws IOException {
        String written = Files.readString(text);
        String renewed = new Shown(folder).renewed(written);
        if (!renewed.equals(written)) {
            Path left = Files.createDirectories(Path.of("target/handbook")).resolve(text.getFileName());
            Files.writeString(left, renewed);
        }

        assertThat(renewed).isEqualTo(written);
    }

    @Test
    void an_answer_that_is_not_today_s_any_more_is_renewed_within_its_lines() {
        String written = "```shown 1-1\n$ boltlore orders pannier-van\nall of them\n…\n```\n";

        assertThat(new Shown(folder).renewed(written))
                .contains("valid orders in all.")
                .doesNotContain("all of them");
        assertThat(Shown.in(written)).isEqualTo(1);
    }

    private static List<String> unknown(String text) {
        List<String> unknown = new ArrayList<>();
        IN_THE_TEXT.matcher(text).results().map(found -> found.group(1)).forEach(line -> {
            List<String> words = Stream.of(line.split("[\\s\\[\\]…|=]+", -1))
                    .filter(each -> !each.isEmpty())
                    .toList();
            CommandLine command = Shown.command(words);
            String path = command.getCommandSpec().qualifiedName(" ").replaceFirst("boltlore ?", "");
            int depth = path.isEmpty() ? 0 : path.split(" ", -1).length;
            if (!command.getSubcommands().isEmpty()
                    && words.size() > depth
                    && words.get(depth).matches(NAME)) {
                unknown.add((path + " " + words.get(depth)).strip());
            }
            words.stream()
                    .filter(each -> each.startsWith("-"))
                    .filter(each -> command.getCommandSpec().findOption(each) == null)
                    .forEach(each -> unknown.add(path + " " + each));
        });
        return unknown;
    }

    private static List<String> refused(String text) {
        List<String> refused = new ArrayList<>();
        SHELL.matcher(text).results().flatMap(block -> block.group(1).lines()).forEach(line -> {
            List<String> words = Shown.words(line);
            if (words.get(0).equals("boltlore")) {
                try {
                    Shown.command(List.of())
                            .parseArgs(words.subList(1, words.size()).toArray(String[]::new));
                } catch (ParameterException wrong) {
                    refused.add(line + ": " + wrong.getMessage());
                }
            }
        });
        return refused;
    }
}
