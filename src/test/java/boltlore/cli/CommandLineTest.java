package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The command line")
class CommandLineTest {

    private static final String ORDERS = "catalog/orders";
    private static final String ORDER = ORDERS + "/bl-1001.json";

    @TempDir
    Path folder;

    @Test
    @DisplayName("alone says the three things one does first, each as a command that works")
    void alone() {
        Ran ran = boltlore();

        List<String> commands = ran.out()
                .lines()
                .filter(line -> line.startsWith("  boltlore "))
                .map(line -> line.strip().split(" {2,}", -1)[0])
                .toList();
        assertThat(ran.exit()).isEqualTo(Exit.OK);
        assertThat(ran.out()).contains("'boltlore --help' lists all commands");
        assertThat(commands).hasSize(3).allSatisfy(command -> {
            String[] words = (command.contains(" kit ") ? command + " --out " + folder : command).split(" ", -1);
            Ran first = boltlore((Object[]) Arrays.copyOfRange(words, 1, words.length));
            assertThat(first.exit()).as(first.toString()).isLessThanOrEqualTo(Exit.STOPPED);
            assertThat(first.out()).isNotBlank();
        });
    }

    @Test
    @DisplayName("lists every command once, under its room")
    void help_by_room() {
        String help = boltlore("--help").out();

        assertThat(help.indexOf("\nSales\n"))
                .isPositive()
                .isLessThan(help.indexOf("\n  kit "))
                .isLessThan(help.indexOf("\nStores\n"));
        assertThat(help.indexOf("\nEngineering\n")).isLessThan(help.indexOf("\n  prove "));
        assertThat(Hung.ALL).allSatisfy(each -> assertThat(help).containsOnlyOnce("\n  " + each.name() + " "));
    }

    @Test
    @DisplayName("knows each command under the name that it is listed by, and says what it takes")
    void every_command_has_help() {
        assertThat(Hung.ALL).allSatisfy(each -> {
            assertThat(boltlore(each.name(), "--help").out()).startsWith("Usage: boltlore " + each.name() + " ");
            assertThat(new picocli.CommandLine(each.made().get()).getCommandName())
                    .isEqualTo(each.name());
        });
    }

    @ParameterizedTest
    @CsvSource({
        "prob, No command 'prob'. Did you mean 'prove'?",
        "kitt, No command 'kitt'. Did you mean 'kit'?",
        "kti, No command 'kti'. Did you mean 'kit'?",
        "frob, No command 'frob'. There are:",
        "frob, Sales: families",
        "xy, There are:",
        "stock shrot, No command 'shrot' of 'boltlore stock'. Did you mean 'short'?",
        "stock frob, No command 'frob' of 'boltlore stock'. There are:",
        "--versoin, No option '--versoin'. Did you mean '--version'?",
        "kit --defualts x, No option '--defualts' of 'boltlore kit'. Did you mean '--defaults'?",
        "check one two, One word too many: 'two'.",
        "desk --port abc, 'abc' is no whole number, or too large a one.",
        "book journal --after 99999999999999999999, '99999999999999999999' is no whole number, or too large a one.",
        "why x, Missing: ORDER… PART. boltlore why",
        "kit, Missing: ORDER. boltlore kit",
        "kit x --out, Missing required parameter for option '--out'"
    })
    @DisplayName("answers a slip with the nearest name and exit 2")
    void slips(String typed, String told) {
        Ran ran = boltlore((Object[]) typed.split(" ", -1));

        assertThat(ran.exit()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains(told).contains("--help'").doesNotContain("Exception", "null");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    @DisplayName("takes a word that begins with @ as it is")
    void no_files_of_arguments() throws IOException {
        Path file = Files.writeString(folder.resolve("words"), "--help");

        assertThat(boltlore("kit", "@" + file).err()).contains("@" + file);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u001B]0;title\u0007",
                "\u001B[2J",
                "\u009B2J",
                "\u007F",
                "\u001B[8mhidden",
                "a\bb",
                "a\u202Eb",
                "\u2028b",
                "\uDB40\uDC01"
            })
    @DisplayName("prints no character that steers the terminal or turns the line about, whoever wrote it")
    void steering(String text) {
        Ran ran = boltlore("parts", text);

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.out() + ran.err())
                .doesNotContainPattern("[\\p{Cc}\\p{Cf}\\p{Zl}&&[^\\n]]")
                .containsPattern("\\\\u[0-9a-f]{4}");
    }

    @Test
    @DisplayName("says so where the answer could not be written to the end")
    void full_disk() {
        StringWriter err = new StringWriter();
        Writer full = new Writer() {
            @Override
            public void write(char[] text, int from, int length) throws IOException {
                throw new IOException("No space left on device");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };

        assertThat(Boltlore.run(new PrintWriter(full), new PrintWriter(err), "parts", "--json"))
                .isEqualTo(Exit.NOT_WRITTEN);
        assertThat(err.toString())
                .isEqualToIgnoringNewLines("The answer could not be printed: the output is closed or full.");
    }

    @Test
    @DisplayName("says which library is missing, and that an internal error is none of the input")
    void defects() {
        StringWriter err = new StringWriter();
        Throwable missing = new NoClassDefFoundError("a/b/C").initCause(new ClassNotFoundException("a.b.C"));

        assertThat(Defect.told(new PrintWriter(err), missing)).isEqualTo(Exit.DEFECT);
        assertThat(Defect.told(new PrintWriter(err), new IllegalStateException("odd")))
                .isEqualTo(Exit.DEFECT);
        assertThat(err.toString().lines().toList())
                .satisfiesExactly(
                        first -> assertThat(first)
                                .isEqualTo(
                                        "boltlore: a library is missing or damaged (a.b.C). Install Boltlore again."),
                        second -> assertThat(second).startsWith("boltlore: internal error, not of your input: "));
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 40, 80, 140})
    @DisplayName("breaks lines at blanks only, and loses no word")
    void wrapping(int width) {
        String line = "    "
                + IntStream.range(0, 60)
                        .mapToObj(i -> "w".repeat(1 + i % 17))
                        .reduce((a, b) -> a + " " + b)
                        .orElseThrow();
        List<String> rows = Wrapped.rows(line, width);

        assertThat(rows).allSatisfy(row -> assertThat(row.length()).isLessThanOrEqualTo(Math.max(width, 23)));
        assertThat(String.join(" ", rows).strip().split(" +", -1))
                .isEqualTo(line.strip().split(" +", -1));
        assertThat(Wrapped.rows("short", width)).containsExactly("short");
    }

    @Nested
    @DisplayName("families")
    class Families {

        @Test
        @DisplayName("lists them with their options and the orders beside the catalogue")
        void listed() {
            assertThat(boltlore("families").out())
                    .contains("pannier-van\n  Ockmere Pannier: 14 options, 14 orders in catalog/orders\n")
                    .contains("stook-pickup\n");
            assertThat(boltlore("families", "--json").out()).contains("\"family\": \"stook-pickup\"");
        }

        @Test
        @DisplayName("counts none where no orders lie there")
        void none() {
            assertThat(boltlore("families", "--catalogue", "src/test/resources/example/catalog")
                            .out())
                    .contains("example\n")
                    .contains(" 0 orders");
        }
    }

    @Nested
    @DisplayName("parts")
    class Parts {

        @Test
        @DisplayName("finds those that have every word in number, name, supplier or its code")
        void words() {
            assertThat(boltlore("parts", "INLET", "cowl").out())
                    .contains("PV-IC-2E  C  Inlet cowl Type 2, early body")
                    .doesNotContain("Charging inlet");
            assertThat(boltlore("parts", "brennock", "bolt").out()).contains("Hexagon bolt");
        }

        @Test
        @DisplayName("says where one part is used, by its number or as the only one found")
        void where() {
            String known = boltlore("parts", "PV-CR-E").out();

            assertThat(known).startsWith("PV-CR-E ").contains("\n  ");
            assertThat(boltlore("parts", "cradle, early").out()).contains("PV-CR-E");
        }

        @Test
        @DisplayName("finds nothing where no part has all words")
        void nothing() {
            Ran ran = boltlore("parts", "inlet", "zzz");

            assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
            assertThat(ran.err()).contains("zzz");
        }
    }

    @Nested
    @DisplayName("why")
    class Why {

        @Test
        @DisplayName("says of a folder which orders hold the part, why, which do not, and which have no kit yet")
        void folder() {
            Ran ran = boltlore("why", ORDERS, "PV-CR-E");

            assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
            assertThat(ran.out())
                    .startsWith("PV-CR-E Cradle, early body: in 1 of 17 orders\nBL-1005, ")
                    .contains("Not in: BL-1001, ")
                    .contains("No kit yet, their choices stop them: BL-1006, BL-1007, BL-1009.");
        }

        @Test
        @DisplayName("takes several orders")
        void several() {
            Ran ran = boltlore("why", ORDER, ORDERS + "/bl-1005.json", "PV-CR-E", "--json");

            assertThat(ran.exit()).isEqualTo(Exit.OK);
            assertThat(ran.out()).contains("\"order\": \"BL-1001\"", "\"order\": \"BL-1005\"", "\"inKit\": true");
        }

        @Test
        @DisplayName("answers for the orders that can be read, and tells the faults of the others")
        void faulty() throws IOException {
            Path broken = Files.writeString(folder.resolve("broken.json"), "{");
            Ran ran = boltlore("why", ORDER, broken, "PV-CR-E");

            assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
            assertThat(ran.out()).contains("in 0 of 1 order");
            assertThat(ran.err()).contains("broken.json");
        }

        @Test
        @DisplayName("names the nearest part for one that is not known")
        void unknown() {
            assertThat(boltlore("why", ORDER, "PV-CR-1").err()).contains("Did you mean 'PV-CR-E'?");
        }
    }
}
