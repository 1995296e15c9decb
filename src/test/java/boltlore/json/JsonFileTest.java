package boltlore.json;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A JSON file that cannot be used at all")
class JsonFileTest {

    @TempDir
    private Path folder;

    private List<Fault> faults(Path file) {
        return JsonFile.read(file).faults();
    }

    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("order.json"), bytes);
    }

    private Path file(String text, Charset charset) throws IOException {
        return file(text.getBytes(charset));
    }

    @Test
    @DisplayName("is missing")
    void missing() {
        Path file = folder.resolve("gone.json");
        assertThat(faults(file))
                .containsExactly(Fault.of(file.toString(), "nothing of that name", "a JSON file", "Check the path."));
    }

    @Test
    @DisplayName("is a folder")
    void isFolder() {
        assertThat(faults(folder))
                .containsExactly(Fault.of(folder.toString(), "a folder", "a JSON file", "Name a file in that folder."));
    }

    @Test
    @DisplayName("is empty, or holds nothing but blanks")
    void empty() throws IOException {
        for (String nothing : List.of("", " \n\t\r\n")) {
            assertThat(faults(file(nothing, StandardCharsets.UTF_8)))
                    .singleElement()
                    .extracting(Fault::found)
                    .isEqualTo("an empty file");
        }
    }

    @Test
    @DisplayName("is over 8 MB and is refused by its size alone")
    void overLarge() throws IOException {
        Path file = folder.resolve("large.json");
        setLength(file, JsonFile.MOST_BYTES + 1);
        assertThat(faults(file))
                .containsExactly(Fault.of(
                        file.toString(),
                        "8,388,609 bytes",
                        "at most 8 MB",
                        "Split the file, or check that it is the one you meant."));
    }

    @Test
    @DisplayName("is not refused by its size at 32 MB")
    void justNotOverLarge() throws IOException {
        Path file = folder.resolve("large.json");
        Files.writeString(file, "{}" + " ".repeat((int) JsonFile.MOST_BYTES - 2));
        assertThat(JsonFile.read(file)).isInstanceOf(Outcome.Sound.class);
    }

    private static void setLength(Path file, long length) throws IOException {
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(length);
        }
    }

    @Test
    @DisplayName("may not be read")
    void unreadable() throws IOException {
        Path file = file("{}", StandardCharsets.UTF_8);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        // The superuser may read everything, except the first page of a process's memory.
        Path unreadable = Files.isReadable(file) ? Path.of("/proc/self/mem") : file;
        assertThat(faults(unreadable)).singleElement().extracting(Fault::found).isEqualTo("a file that cannot be read");
    }

    @Test
    @DisplayName("is UTF-16, with or without a byte order mark")
    void utf16() throws IOException {
        for (Charset charset : List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            assertThat(faults(file("{\"order\": \"S-1\"}", charset))).containsExactly(encoding(1, "text in UTF-16"));
        }
    }

    @Test
    @DisplayName("is UTF-32")
    void utf32() throws IOException {
        byte[] bytes = "\uFEFF{}".getBytes(Charset.forName("UTF-32LE"));
        assertThat(faults(file(bytes))).containsExactly(encoding(1, "text in UTF-32"));
    }

    @Test
    @DisplayName("begins with a byte order mark")
    void byteOrderMark() throws IOException {
        assertThat(faults(file("\uFEFF{}", StandardCharsets.UTF_8)))
                .containsExactly(encoding(1, "a byte order mark before the text"));
    }

    @Test
    @DisplayName("is Latin-1, said with the line of the first byte that is wrong")
    void latin1() throws IOException {
        assertThat(faults(file("{\n\"customer\": \"M\u00fcller\"}", StandardCharsets.ISO_8859_1)))
                .containsExactly(encoding(2, "the byte 0xFC, which is not UTF-8"));
    }

    @Test
    @DisplayName("but letters beyond ASCII in UTF-8 are welcome")
    void umlauts() throws IOException {
        assertThat(JsonFile.read(file("{\"customer\": \"M\u00fcller\"}", StandardCharsets.UTF_8)))
                .isInstanceOf(Outcome.Sound.class);
    }

    private Fault encoding(int line, String found) {
        return new Fault(
                folder.resolve("order.json").toString(),
                line,
                "",
                found,
                "UTF-8 without a byte order mark",
                "Save the file again as UTF-8 without a byte order mark.");
    }
}
