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
    void makes_a_family_of_three_options_that_is_consistent_and_proved() {
        boltlore("new", "family", "lamp-cart", "--catalogue", shed);

        assertThat(boltlore("check", shed).out()).contains("lamp-cart with 3 options", "The data is consistent.");
        assertThat(boltlore("prove", "--catalogue", shed).out())
                .contains("about 8 valid orders", "No defect was found.");
    }

    @Test
    void makes_a_part_with_its_position() {
        boltlore("new", "family", "lamp-cart", "--catalogue", shed);

        Ran ran = boltlore("new", "part", "LC-9", "--catalogue", shed);

        assertThat(ran.exit()).isEqualTo(Exit.OK);
        assertThat(boltlore("check", shed).out()).contains("7 parts", "The data is consistent.");
    }

    @Test
    void makes_a_position_for_a_part_that_is_there() {
        boltlore("new", "family", "lamp-cart", "--catalogue", shed);

        Ran ran = boltlore("new", "position", "second-lamp", "--part", "LAMP-CART-LAMP", "--catalogue", shed);

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(boltlore("check", shed).exit()).isEqualTo(Exit.OK);
    }

    @Test
    void says_what_to_put_into_a_file_that_is_there() {
        boltlore("new", "family", "lamp-cart", "--catalogue", shed);

        assertThat(boltlore("new", "option", "tow-bar", "--catalogue", shed).out())
                .contains("{\"option\": \"tow-bar\", \"values\": [{\"value\": \"yes\"}, {\"value\": \"no\"}]}");
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

        Files.writeString(parts, Files.readString(parts).replace("\"0.1\"", "\"-1\""));
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
