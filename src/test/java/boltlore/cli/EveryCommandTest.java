package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Every command of the command line, with what nobody means to give it. */
@DisplayName("Every command answers wrong input by a sentence and a documented exit code")
class EveryCommandTest {

    private static final Pattern TRACE =
            Pattern.compile("Exception|\\tat |\\bnull\\b|internal error|[a-z]+\\.[a-z]+\\.[A-Z][a-z]+\\b|Optional\\[");
    private static final String DEEP = "[".repeat(100_000);

    @TempDir
    private static Path folder;

    private static final Map<String, Path> BAD_FILES = new LinkedHashMap<>();
    private static final InputStream TERMINAL = System.in;

    @BeforeAll
    static void write() throws IOException {
        System.setIn(new ByteArrayInputStream(new byte[0]));
        byte[] noise = new byte[4096];
        new Random(7).nextBytes(noise);
        BAD_FILES.put("missing", folder.resolve("missing.json"));
        BAD_FILES.put("folder", Files.createDirectory(folder.resolve("folder.json")));
        BAD_FILES.put("empty", Files.createFile(folder.resolve("empty.json")));
        BAD_FILES.put("noise", Files.write(folder.resolve("noise.json"), noise));
        BAD_FILES.put("shape", Files.writeString(folder.resolve("shape.json"), "[{\"order\": [1, {}, true]}]"));
        BAD_FILES.put("deep", Files.writeString(folder.resolve("deep.json"), DEEP));
        Ran.boltlore("book", "info", "--book", folder.resolve("book.db"));
    }

    @AfterAll
    static void giveBack() {
        System.setIn(TERMINAL);
    }

    /** Those that do something and come back. */
    static List<CommandSpec> commands() {
        return CommandModel.whole().getSubcommands().values().stream()
                .flatMap(command -> command.getSubcommands().isEmpty()
                        ? Stream.of(command)
                        : command.getSubcommands().values().stream())
                .map(CommandLine::getCommandSpec)
                .filter(spec -> !spec.qualifiedName().equals("boltlore desk"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void with_wrong_files(CommandSpec command) {
        List<String> wrong = new ArrayList<>();
        wrong.addAll(problems(words(command, "", null, "")));
        wrong.addAll(problems(words(command, "--frobnicate", null, "")));
        BAD_FILES.forEach((kind, file) -> wrong.addAll(problems(words(command, file.toString(), null, ""))));
        assertThat(wrong).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void with_wrong_values_of_options(CommandSpec command) {
        List<String> wrong = new ArrayList<>();
        for (OptionSpec option : command.options()) {
            if (option.arity().max() > 0 && !option.longestName().matches("--(book|by|help)")) {
                for (String value : values(option)) {
                    wrong.addAll(
                            problems(words(command, BAD_FILES.get("missing").toString(), option, value)));
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static List<String> values(OptionSpec option) {
        return isFile(option)
                ? BAD_FILES.values().stream().map(Path::toString).toList()
                : List.of("x", "", "9".repeat(400), "1E999999999", "2026-02-30", "-1", "a=b=c");
    }

    private static boolean isFile(ArgSpec arg) {
        return arg.type() == Path.class
                || (arg.auxiliaryTypes().length > 0 && arg.auxiliaryTypes()[0] == Path.class)
                || arg.paramLabel().matches(".*(FILE|FOLDER|CATALOGUE|ORDER).*");
    }

    private static List<String> words(CommandSpec command, String given, OptionSpec option, String value) {
        List<String> words = new ArrayList<>(List.of(
                command.qualifiedName(" ").replaceFirst("^boltlore ", "").split(" ")));
        for (PositionalParamSpec each : command.positionalParameters()) {
            for (int i = 0; i < Math.max(1, each.arity().min()) && !given.isEmpty(); i++) {
                words.add(given);
            }
        }
        for (OptionSpec each : command.options()) {
            String name = each.longestName();
            if (each.equals(option)) {
                words.addAll(List.of(name, value));
            } else if (name.equals("--book")) {
                words.addAll(List.of(name, folder.resolve("book.db").toString()));
            } else if (name.equals("--out")) {
                words.addAll(List.of(name, folder.resolve("out").toString()));
            } else if (each.required() && !given.isEmpty()) {
                words.addAll(List.of(name, given));
            }
        }
        return words;
    }

    private static List<String> problems(List<String> words) {
        Ran ran = Ran.boltlore(words.toArray());
        String said = ran.out() + ran.err();
        boolean right =
                ran.exit() >= 0 && ran.exit() <= 7 && !TRACE.matcher(said).find();
        return right ? List.of() : List.of(String.join(" ", words) + ": " + ran);
    }
}
