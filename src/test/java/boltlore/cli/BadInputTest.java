package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Bad input is a clear sentence and an exit code, never a stack trace")
class BadInputTest {

    private static final String SOUND = sound();

    @TempDir
    Path folder;

    @Test
    @DisplayName("a missing order")
    void missing() {
        refused(folder.resolve("nowhere.json"), Exit.FAULTS);
    }

    @Test
    @DisplayName("an empty order")
    void empty() throws IOException {
        refused(order(""), Exit.FAULTS);
    }

    @Test
    @DisplayName("a truncated order")
    void truncated() throws IOException {
        refused(order(SOUND.substring(0, SOUND.length() / 2)), Exit.FAULTS);
    }

    @Test
    @DisplayName("an order of over 8 MB, refused before it is parsed")
    void too_large() throws IOException {
        Path file = folder.resolve("large.json");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(33L << 20);
        }
        assertThat(refused(file, Exit.FAULTS).err()).contains("at most 8 MB");
    }

    @Test
    @DisplayName("an order in another encoding")
    void other_encoding() throws IOException {
        Path file = folder.resolve("latin.json");
        Files.write(file, SOUND.replace("Orchard", "Obstgärten").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(refused(file, Exit.FAULTS).err()).contains("UTF-8");
    }

    @Test
    @DisplayName("an order that nests a hundred thousand deep")
    void deeply_nested() throws IOException {
        refused(order("[".repeat(100_000)), Exit.FAULTS);
    }

    @Test
    @DisplayName("an order with a key twice")
    void key_twice() throws IOException {
        refused(order(SOUND.replaceFirst("\\{", "{\"family\": \"pannier-van\", ")), Exit.FAULTS);
    }

    @Test
    @DisplayName("an option name that is misspelt, with the nearest known one")
    void misspelt_option() throws IOException {
        assertThat(refused(order(SOUND.replace("\"drive-side\"", "\"drive-sied\"")), Exit.FAULTS)
                        .err())
                .contains("drive-sied")
                .contains("Did you mean 'drive-side'?");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../x", "/tmp/x", "a/b", "..", ".hidden", "a\\\\b", ""})
    @DisplayName("a path in an order's name")
    void path_in_the_name(String name) throws IOException {
        refused(order(SOUND.replace("\"BL-1001\"", "\"" + name + "\"")), Exit.FAULTS);
        assertThat(folder.resolve("exports")).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"=HYPERLINK(1)", "+1", "-1+1", "@SUM(A1)"})
    @DisplayName("a customer's name that a spreadsheet would run is text on every sheet")
    void formula_in_a_name(String name) throws IOException {
        Ran ran = Ran.boltlore(
                "kit", order(SOUND.replace("Orchard Lane Bakery", name)), "--out", folder.resolve("exports"));

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        try (var files = Files.walk(folder.resolve("exports/BL-1001/csv"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                assertThat(Files.readString(file).lines())
                        .as(file.toString())
                        .noneMatch(line -> line.startsWith(name) || line.contains("," + name));
            }
        }
    }

    @Test
    @DisplayName("no name at all, where a folder of everything that lies here would be taken")
    void no_name() {
        for (String[] words :
                new String[][] {{"kit", ""}, {"kit", "catalog/orders/bl-1001.json", "--out", ""}, {"check", " "}}) {
            Ran ran = Ran.boltlore((Object[]) words);
            assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.USAGE);
            assertThat(ran.err()).contains("no name at all").doesNotContain("Exception");
        }
    }

    @Test
    @DisplayName("a line break in a file's name, behind which nothing passes for a sentence of the program")
    void line_break_in_a_name() throws IOException {
        Path file = Files.writeString(folder.resolve("a\nBL-1001, all sound\r.json"), "");

        Ran ran = Ran.boltlore("kit", file);

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("a\\nBL-1001, all sound\\r.json: found an empty file");
        assertThat(ran.err().lines().toList()).noneMatch(line -> line.startsWith("BL-1001"));
    }

    @Test
    @DisplayName(
            "a folder of orders in which programs keep files of their own, with a point in front, is the orders alone")
    void hidden_files_are_no_orders() throws IOException {
        Files.writeString(folder.resolve(".bl-1001.json"), "half saved");
        Files.writeString(folder.resolve("BL-1001.JSON"), SOUND);

        Ran ran = Ran.boltlore("why", folder, "PV-BL-S");

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(ran.out()).contains("BL-1001");
    }

    @Test
    @DisplayName("an unknown command, with a word on how to call it")
    void unknown_command() {
        Ran ran = Ran.boltlore("kitt", "x.json");
        assertThat(ran.exit()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("kit").doesNotContain("Exception");
    }

    @Test
    @DisplayName("a catalogue folder that is not there")
    void no_catalogue() throws IOException {
        Ran ran = Ran.boltlore("kit", order(SOUND), "--catalogue", folder.resolve("none"));
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("none").doesNotContain("Exception");
    }

    private Ran refused(Path file, int exit) {
        Ran ran = Ran.boltlore("kit", file, "--out", folder.resolve("exports"));
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(exit);
        assertThat(ran.err())
                .contains(file.toString())
                .contains("1 fault")
                .doesNotContain("Exception")
                .doesNotContain("\tat ");
        return ran;
    }

    private Path order(String text) throws IOException {
        return Files.writeString(folder.resolve("order.json"), text);
    }

    private static String sound() {
        try {
            return Files.readString(Path.of("catalog", "orders", "bl-1001.json"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
