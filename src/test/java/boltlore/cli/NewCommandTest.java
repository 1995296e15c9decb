package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("boltlore new")
class NewCommandTest {

    private static final Pattern KEY = Pattern.compile("\"[^\"]*\":");

    @TempDir
    private Path folder;

    private Path shed;

    @BeforeEach
    void workshop() {
        shed = folder.resolve("shed");
        assertThat(boltlore("new", "workshop", shed).exit()).isEqualTo(Exit.OK);
    }

    @Test
    void makes_a_family_of_three_options_that_is_proved_and_of_which_nothing_but_the_placeholders_is_told() {
        boltlore("new", "family", "lamp-cart", "--catalogue", shed);

        assertThat(boltlore("check", shed).out())
                .contains(
                        "lamp-cart with 3 options",
                        "Check, still holds the placeholder: 6",
                        "To check: 6 in the data, 0 texts to translate.");
        assertThat(boltlore("prove", "--catalogue", shed).out())
                .contains("about 8 valid orders", "No defect was found.");
    }

    @Test
    void makes_a_part_with_its_position() {
        boltlore("new", "family", "lamp-cart", "--catalogue", shed);

        Ran ran = boltlore("new", "part", "LC-9", "--catalogue", shed);

        assertThat(ran.exit()).isEqualTo(Exit.OK);
        assertThat(boltlore("check", shed).out())
                .contains("7 parts", "part LC-9: found name '? LC-9', orderCode '?', cost 1.111, massKg 0.1111")
                .contains("To check: 7 in the data");
    }

    @Test
    void a_part_that_is_filled_in_is_told_no_longer() throws IOException {
        boltlore("new", "family", "lamp-cart", "--catalogue", shed);
        boltlore("new", "part", "LC-9", "--catalogue", shed);
        Path file = shed.resolve("parts/lc-9.json");

        Files.writeString(
                file,
                Files.readString(file)
                        .replace("? LC-9", "Tail lamp")
                        .replace("\"?\"", "\"TL 9\"")
                        .replace("1.111", "2.50")
                        .replace("0.1111", "0.3"));

        assertThat(boltlore("check", shed).out()).doesNotContain("LC-9").contains("To check: 6 in the data");
    }

    @Test
    void makes_several_parts_at_once_and_none_of_them_where_one_is_there_already() {
        boltlore("new", "family", "lamp-cart", "--catalogue", shed);

        Ran ran = boltlore("new", "part", "LC-1", "LC-2", "LC-3", "--catalogue", shed);
        Ran again = boltlore("new", "part", "LC-4", "LC-2", "LC-3", "--catalogue", shed);

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(boltlore("check", shed).out()).contains("9 parts");
        assertThat(again.exit()).isEqualTo(Exit.FAULTS);
        assertThat(again.err()).contains("part 'LC-2', which is there already", "part 'LC-3', which is");
        assertThat(shed.resolve("parts/lc-4.json")).doesNotExist();
    }

    @Test
    void makes_a_position_for_a_part_that_is_there() {
        boltlore("new", "family", "lamp-cart", "--catalogue", shed);

        Ran ran = boltlore("new", "position", "second-lamp", "--part", "LAMP-CART-LAMP", "--catalogue", shed);

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(boltlore("check", shed).out()).contains("5 positions").doesNotContain("second-lamp");
    }

    @Test
    void says_that_a_position_is_for_a_part_and_which_part_was_meant() {
        boltlore("new", "family", "lamp-cart", "--catalogue", shed);

        Ran none = boltlore("new", "position", "second-lamp", "--catalogue", shed);
        Ran slip = boltlore("new", "position", "second-lamp", "--part", "LAMP-CART-LMAP", "--catalogue", shed);

        assertThat(none.exit()).isEqualTo(Exit.FAULTS);
        assertThat(none.err()).contains("no --part").doesNotContain("null");
        assertThat(slip.err()).contains("part 'LAMP-CART-LMAP'", "LAMP-CART-LAMP");
    }

    @Test
    void puts_an_option_behind_the_others_and_leaves_the_rest_of_the_file_as_it_is() throws IOException {
        boltlore("new", "family", "lamp-cart", "--catalogue", shed);
        Path family = shed.resolve("families/lamp-cart/family.json");
        String before = Files.readString(family);

        Ran ran = boltlore("new", "option", "tow-bar", "--catalogue", shed);

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(ran.out()).contains("family.json", "name it in the 'when'");
        String added = "{\"option\": \"tow-bar\", \"values\": [{\"value\": \"yes\"}, {\"value\": \"no\"}]}";
        assertThat(Files.readString(family).replaceFirst(",\\s*" + Pattern.quote(added), ""))
                .isEqualTo(before);
        assertThat(boltlore("check", shed).out()).contains("4 options", "value that changes nothing");
    }

    @Test
    void changes_nothing_where_the_option_is_there_already() throws IOException {
        boltlore("new", "family", "lamp-cart", "--catalogue", shed);
        Path family = shed.resolve("families/lamp-cart/family.json");
        String before = Files.readString(family);

        Ran ran = boltlore("new", "option", "lamp", "--catalogue", shed);

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("option 'lamp', which is there already");
        assertThat(Files.readString(family)).isEqualTo(before);
    }

    @Nested
    @DisplayName("from a table")
    class Tabled {

        private Path table;

        @BeforeEach
        void family() {
            boltlore("new", "family", "lamp-cart", "--catalogue", shed);
            table = folder.resolve("parts.csv");
        }

        private Ran made(String... lines) throws IOException {
            Files.writeString(table, String.join("\n", lines) + "\n");
            return boltlore("new", "part", "--table", table, "--catalogue", shed);
        }

        @Test
        void takes_25_parts_with_one_command_and_no_key_of_json() throws IOException {
            List<String> lines = new ArrayList<>(List.of("part;name;cost;massKg;orderCode;quantity;when"));
            for (int i = 1; i <= 25; i++) {
                String when = i <= 20 ? "" : i % 2 == 0 ? "body=early lamp=yes" : "body=late lamp=yes";
                lines.add("TF-" + i + ";Fitting no. " + i + ";" + i + ",50;0,2;F " + i + ";2;" + when);
            }

            Ran ran = made(lines.toArray(String[]::new));

            assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
            assertThat(boltlore("check", shed).out())
                    .contains("31 parts", "To check: 6 in the data")
                    .doesNotContain("TF-");
            assertThat(boltlore("prove", "--catalogue", shed).out()).contains("No defect was found.");
            assertThat(Files.readString(shed.resolve("parts/tf-1.json"))).contains("\"cost\": \"25.50\"");
        }

        @Test
        void tells_all_faults_of_it_at_once_and_writes_nothing() throws IOException {
            Ran ran = made(
                    "part,name,cost,massKg,orderCode,when",
                    "LC-1,,2,0.1,F 1,",
                    "LAMP-CART-LAMP,Lamp,two,0.1,F 2,body=late",
                    "LC-1,Lamp,2,0.1,F 3,body=none");

            assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
            assertThat(ran.err())
                    .contains("parts.csv:2", "an empty cell")
                    .contains("part 'LAMP-CART-LAMP' again", "'two'")
                    .contains("part 'LC-1' again", "'body=none'", "body=early|late");
            assertThat(shed.resolve("parts/lc-1.json")).doesNotExist();
        }

        @Test
        void takes_what_is_not_known_yet_as_placeholders_and_no_part_without_a_name() throws IOException {
            assertThat(made("part,name,cost,massKg,orderCode", "TF-1,Bracket,,,")
                            .exit())
                    .isEqualTo(Exit.OK);
            assertThat(boltlore("check", shed).out())
                    .contains("part TF-1: found orderCode '?', cost 1.111, massKg 0.1111");
            assertThat(made("part,name,cost,massKg,orderCode", "TF-2,,1,1,F 1").exit())
                    .isEqualTo(Exit.FAULTS);
        }

        @Test
        void says_which_headings_it_has() throws IOException {
            assertThat(made("part,name,price", "LC-1,Lamp,2").err())
                    .contains("the headings part, name, price", "part, name, cost, massKg, orderCode");
        }
    }

    @Test
    void changes_no_file_that_is_there() {
        assertThat(boltlore("new", "workshop", shed).exit()).isEqualTo(Exit.NOT_WRITTEN);
    }

    @Test
    void refuses_a_name_that_is_none() {
        Ran ran = boltlore("new", "family", "Lamp Cart", "--catalogue", shed);

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("'Lamp Cart'");
    }

    @Nested
    @DisplayName("leaves so much to defaults")
    class Keys {

        @Test
        void that_a_family_of_25_parts_takes_at_most_250_keys() throws IOException {
            StringBuilder parts = new StringBuilder("{\"parts\": [");
            StringBuilder positions = new StringBuilder("{\"positions\": [");
            for (int i = 1; i <= 25; i++) {
                String comma = i == 1 ? "" : ",";
                parts.append(comma)
                        .append(String.format(
                                "{\"part\": \"TF-%d\", \"name\": \"Fitting %d\", \"orderCode\": \"F%d\", \"cost\": \"%d\","
                                        + " \"massKg\": \"0.1\", \"bin\": \"A-01-01-A-%02d\"}",
                                i, i, i, i, i));
                String when = i <= 15
                        ? ""
                        : i == 16
                                ? ", \"when\": {\"side\": \"left\"}"
                                : i == 17
                                        ? ", \"when\": {\"lamp\": \"yes\"}"
                                        : ", \"when\": {\"body\": \"" + (i % 2 == 0 ? "early" : "late") + "\"}";
                positions.append(comma).append(String.format("{\"part\": \"TF-%d\"%s}", i, when));
            }
            String family = "{\"family\": \"tipper\", \"says\": \"Tipper\", \"options\": ["
                    + "{\"option\": \"body\", \"values\": [{\"value\": \"early\"}, {\"value\": \"late\"}]},"
                    + "{\"option\": \"side\", \"values\": [{\"value\": \"left\"}, {\"value\": \"right\"}]},"
                    + "{\"option\": \"lamp\", \"values\": [{\"value\": \"yes\"}, {\"value\": \"no\"}]}]}";
            int keys = write("parts/tipper.json", parts.append("]}").toString())
                    + write("families/tipper/family.json", family)
                    + write(
                            "families/tipper/kit/all.json",
                            positions.append("]}").toString());

            assertThat(keys).isLessThanOrEqualTo(250);
            assertThat(boltlore("check", shed).out()).contains("25 parts", "The data is consistent.");
            assertThat(boltlore("prove", "--catalogue", shed).exit()).isLessThanOrEqualTo(Exit.STOPPED);
        }

        /** Writes a file and counts its keys. */
        private int write(String file, String text) throws IOException {
            Path path = shed.resolve(file);
            Files.createDirectories(path.getParent());
            Files.writeString(path, text);
            return (int) KEY.matcher(text).results().count();
        }
    }

    @Test
    @DisplayName("and check --watch checks again when a file is saved, in under a second")
    void watch() throws Exception {
        boltlore("new", "family", "lamp-cart", "--catalogue", shed);
        StringWriter out = new StringWriter();
        Thread watching = new Thread(() -> Boltlore.run(
                new PrintWriter(out), new PrintWriter(Writer.nullWriter()), "check", "--watch", shed.toString()));
        watching.start();
        await(out, "Checked in");
        Path parts = shed.resolve("parts/lamp-cart.json");

        Files.writeString(parts, Files.readString(parts).replace("\"0.1111\"", "\"-1\""));
        await(out, "Until", "found -1", "What the errors leave open");
        watching.interrupt();
        watching.join(10_000);

        assertThat(watching.isAlive()).isFalse();
        assertThat(out.toString().split("Checked in", -1)).hasSizeGreaterThanOrEqualTo(2);
    }

    private static void await(StringWriter out, String... oneOf) throws InterruptedException {
        for (int i = 0; i < 100; i++) {
            String text = out.toString();
            if (Arrays.stream(oneOf).anyMatch(text::contains)) {
                return;
            }
            Thread.sleep(100);
        }
        throw new AssertionError("Not said in ten seconds: " + String.join(" or ", oneOf) + "\n" + out);
    }
}
