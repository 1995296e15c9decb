package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A kit as it was built, and the persons around it")
class BuiltInBookTest {

    @TempDir
    private static Path once;

    @TempDir
    private Path folder;

    private DeskAt desk;

    /** Two orders are confirmed once; each test works on a copy of that book. */
    @BeforeAll
    static void confirmed() {
        DeskAt desk = DeskAt.file(once);
        desk.done("order", "draft", "catalog/orders/bl-1001.json", "catalog/orders/bl-1003.json");
        for (String order : new String[] {"BL-1001", "BL-1003"}) {
            desk.done("order", "quote", order);
            desk.done("order", "confirm", order);
        }
    }

    @BeforeEach
    void open() throws IOException {
        desk = DeskAt.file(folder);
        Files.copy(Path.of(DeskAt.file(once).book()), Path.of(desk.book()));
    }

    @Nested
    @DisplayName("holds what was written down")
    class Fitted {

        @Test
        @DisplayName("with the kit's revision, in the kit and in the recall of serial number, lot and heat")
        void recalled() {
            desk.done("built", "fit", "BL-1001", "--part", "CH-11X", "--serial", "S-1", "--lot", "L-7");
            desk.done("built", "fit", "BL-1003", "--part", "VA-PUMP", "--lot", "L-7");
            desk.done("built", "fit", "BL-1003", "--part", "FX-EYE10", "--quantity", "4", "--heat", "H-12");
            desk.done("built", "vehicle", "BL-1001", "OX 1974 0017");

            assertThat(desk.done("recall", "--serial", "S-1"))
                    .isEqualTo("BL-1001, ordered, Orchard Lane Bakery, chassis OX 1974 0017: CH-11X rev. B, fitted: 1,"
                            + " serial S-1, lot L-7 1 kit. ");
            assertThat(desk.done("recall", "--lot", "L-7"))
                    .contains("BL-1001", "BL-1003, ordered, Tilda Marrow, florist: VA-PUMP")
                    .contains("2 kits.");
            assertThat(desk.done("recall", "--lot", "L-7", "--part", "VA-PUMP")).contains("1 kit.");
            assertThat(desk.done("recall", "--heat", "H-12"))
                    .contains("BL-1003")
                    .contains("1 kit.");
            assertThat(desk.done("recall", "--lot", "L-8")).isEqualTo("0 kits. ");
        }

        @Test
        @DisplayName("or only designed, in the recall of part, revision and drawing")
        void designed() {
            assertThat(desk.done("recall", "--part", "AC-COMP"))
                    .contains("BL-1001, ordered, Orchard Lane Bakery: AC-COMP rev. A, in the kit as designed");
            assertThat(desk.done("recall", "--part", "AC-COMP", "--revision", "B"))
                    .isEqualTo("0 kits. ");
            String drawn = desk.done("recall", "--part", "HV-K95");
            String drawing = drawn.replaceAll(".*drawing (\\S+) issue.*", "$1");
            assertThat(desk.done("recall", "--drawing", drawing)).contains("HV-K95");
        }

        @Test
        @DisplayName("and all of one chassis number")
        void vehicle() {
            desk.done("built", "fit", "BL-1001", "--part", "CH-11X", "--serial", "S-1");
            desk.done("built", "vehicle", "BL-1001", "OX 1974 0017");
            desk.done("built", "read", "BL-1001", "insulation", "612", "MΩ", "--least", "1");
            assertThat(desk.done("recall", "--chassis", "OX 1974 0017"))
                    .contains("BL-1001, pannier-van: ordered")
                    .contains("CH-11X rev. B, fitted: 1, serial S-1")
                    .contains("insulation: 612 MΩ, at least 1 MΩ: within")
                    .doesNotContain("BL-1003");
            assertThat(desk.refused("recall", "--chassis", "OX 1974 0018")).contains("a vehicle in the book");
        }

        @Test
        @DisplayName("and all of the chassis number that orders give themselves, in whatever letters")
        void vehicleOfOrders() {
            assertThat(desk.done("recall", "--chassis", "pv 742 01183"))
                    .contains("BL-1001, pannier-van: ordered")
                    .doesNotContain("BL-1003");
            assertThat(desk.refused("recall", "--chassis", "PV 742 0118")).contains("a vehicle in the book");
            assertThat(desk.done("book", "check")).contains("all sums are as it says");
        }

        @Test
        @DisplayName("or taken out again, which stays known")
        void takenOut() {
            String entry = desk.done("built", "fit", "BL-1001", "--part", "CH-11X", "--serial", "S-1")
                    .replaceAll("entry (\\d+):.*", "$1")
                    .strip();
            assertThat(desk.refused("built", "take-out", "BL-1001", entry)).contains("why it comes out");
            assertThat(desk.refused("built", "take-out", "BL-1003", entry, "--reason", "x"))
                    .contains("a part that is in this kit");
            desk.done("built", "take-out", "BL-1001", entry, "--reason", "dead on arrival");
            assertThat(desk.done("recall", "--serial", "S-1")).contains("taken out since");
            desk.done(
                    "built",
                    "fit",
                    "BL-1003",
                    "--part",
                    "CH-11X",
                    "--revision",
                    "B",
                    "--serial",
                    "S-1",
                    "--reason",
                    "x");
        }

        @Test
        @DisplayName("of one serial number in one kit only")
        void once() {
            desk.done("built", "fit", "BL-1001", "--part", "CH-11X", "--serial", "S-1");
            assertThat(desk.refused("built", "fit", "BL-1001", "--part", "CH-11X", "--serial", "S-1"))
                    .contains("which is in order BL-1001");
        }

        @Test
        @DisplayName("from a table: all of its rows, or none")
        void table() throws IOException {
            Path table = Files.writeString(
                    folder.resolve("fitted.csv"), "part;quantity;serial;lot\nCH-11X;1;S-1;\nVA-PUMP;1;;L-7\n");
            desk.done("built", "fit", "BL-1001", "--table", table);
            assertThat(desk.done("built", "show", "BL-1001"))
                    .contains("CH-11X rev. B")
                    .contains("VA-PUMP rev. A");

            Path wrong = Files.writeString(
                    folder.resolve("wrong.csv"), "part,quantity,serial\nVA-PUMP,1,S-2\nCH-11X,2,S-3\n");
            assertThat(desk.refused("built", "fit", "BL-1001", "--table", wrong))
                    .contains("wrong.csv:3")
                    .contains("2 with one serial number");
            assertThat(desk.done("built", "show", "BL-1001")).doesNotContain("S-2");
        }
    }

    @Nested
    @DisplayName("differs from what was designed")
    class Differs {

        @Test
        @DisplayName("by what is not written down, is another revision, is too much or not in the kit")
        void differences() {
            desk.done("built", "fit", "BL-1001", "--part", "CH-11X", "--revision", "C", "--serial", "S-1");
            assertThat(desk.refused("built", "fit", "BL-1001", "--part", "CH-7", "--serial", "S-9"))
                    .contains("a part of its kit");
            desk.done(
                    "built",
                    "fit",
                    "BL-1001",
                    "--part",
                    "CH-7",
                    "--revision",
                    "C",
                    "--serial",
                    "S-9",
                    "--reason",
                    "all we had");
            desk.done("built", "fit", "BL-1001", "--part", "VA-PUMP", "--quantity", "2", "--lot", "L-7");
            assertThat(desk.done("built", "show", "BL-1001"))
                    .contains("CH-11X rev. B: 0 of 1 written down")
                    .contains("CH-11X rev. C: 1 fitted, not in the kit as designed")
                    .contains("CH-7 rev. C: 1 fitted, not in the kit as designed")
                    .contains("VA-PUMP rev. A: 2 fitted, 1 designed");
        }

        @Test
        @DisplayName("and a part that is written down as designed is no difference any more")
        void asDesigned() {
            assertThat(desk.done("built", "show", "BL-1001")).contains("VA-PUMP rev. A: 0 of 1 written down");
            desk.done("built", "fit", "BL-1001", "--part", "VA-PUMP", "--lot", "L-7");
            assertThat(desk.done("built", "show", "BL-1001")).doesNotContain("VA-PUMP rev. A: 0");
        }
    }

    @Nested
    @DisplayName("names persons by their keys")
    class Persons {

        @Test
        @DisplayName("in every entry and content, while the names stand in lines of their own")
        void keysOnly() throws IOException {
            assertThat(desk.exported(folder).lines().filter(line -> !line.startsWith("{\"personal\"")))
                    .isNotEmpty()
                    .noneMatch(line -> decoded(line).contains("Orchard Lane")
                            || decoded(line).contains("Kim Aster"));
            assertThat(desk.exported(folder)).contains("Orchard Lane Bakery").contains("Kim Aster");
        }

        private static String decoded(String line) {
            if (!line.startsWith("{\"content\"")) {
                return line;
            }
            String packed = line.replaceAll(".*\"bytes\": \"([^\"]*)\".*", "$1");
            return new String(java.util.Base64.getDecoder().decode(packed), StandardCharsets.UTF_8);
        }

        @Test
        @DisplayName("and hands out all it holds of one")
        void handedOut() throws IOException {
            desk.done("person", "change", "P-2", "--detail", "telephone=0123 456");
            desk.done("person", "export", "P-2", folder.resolve("p.json"));
            assertThat(Files.readString(folder.resolve("p.json")))
                    .contains("Orchard Lane Bakery", "0123 456", "BL-1001")
                    .contains("place-1-line-1", "Orchard Lane 12", "+353 20 915 0177", "IE0000001XX")
                    .doesNotContain("Tilda");
            assertThat(desk.done("book", "journal")).contains("person exported").doesNotContain("0123");
        }

        @Test
        @DisplayName("and erases one so that no byte of the book holds the name, while the record stays")
        void erased() throws IOException {
            String before = desk.done("order", "show", "BL-1001", "--kit");
            assertThat(desk.refused("person", "erase", "P-2")).contains("why the data are erased");
            assertThat(desk.refused("person", "erase", "P-2", "--reason", "orchard lane bakery asked by letter"))
                    .contains("a reason that holds the name")
                    .doesNotContain("Orchard");
            assertThat(desk.done("person", "erase", "P-2", "--reason", "asked by letter"))
                    .contains("Chassis numbers of orders are kept for recalls");

            assertThat(bytes())
                    .as("neither name nor address nor telephone")
                    .doesNotContain("Orchard Lane", "915 0177", "Fennimore")
                    .contains("Tilda Marrow");
            assertThat(desk.done("order", "show", "BL-1001", "--kit"))
                    .isEqualTo(before.replace("Orchard Lane Bakery", "P-2 (erased)"));
            assertThat(desk.done("person", "list")).contains("P-2, customer: P-2 (erased)");
            assertThat(desk.done("book", "check")).contains("The journal is whole");
            assertThat(desk.refused("person", "erase", "P-2", "--reason", "again"))
                    .contains("whose data the book holds");
        }

        @Test
        @DisplayName(
                "and names the entries in which somebody has typed the name, whatever the case; not those of another")
        void named() {
            desk.done("built", "note", "BL-1001", "concession", "FX-N6", "BAKERY rang: the grey one");
            desk.done("built", "note", "BL-1001", "concession", "FX-N6", "painted in bakeryman green");
            Ran run = desk.run("person", "erase", "P-2", "--reason", "asked by letter", "--json");
            assertThat(run.out()).contains("\"named\": [");
            assertThat(run.out().split("\"entry\":", -1)).hasSize(2);
        }

        private String bytes() throws IOException {
            StringBuilder all = new StringBuilder();
            for (String ending : new String[] {"", "-wal"}) {
                Path file = Path.of(desk.book() + ending);
                if (Files.exists(file)) {
                    all.append(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
                }
            }
            return all.toString();
        }
    }
}
