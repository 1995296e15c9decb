package boltlore.bring;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that mean harm, or were harmed: each is refused in a sentence, none takes the memory or follows a link. */
@DisplayName("A file is refused")
class HostileFilesTest {

    private static final Path SHEETS = Path.of("src/test/resources/boltlore/bring/sheets");
    private static final String TYPE = "application/vnd.oasis.opendocument.spreadsheet";

    private static List<Fault> faults(byte[] bytes) {
        return Brought.read("list", bytes, null, "list", Known.NOTHING).faults();
    }

    private static byte[] sheet(String name) throws IOException {
        return Files.readAllBytes(SHEETS.resolve(name));
    }

    /** The archive with some of its entries changed; those that it has not are added. */
    private static byte[] changed(byte[] archive, Map<String, byte[]> changes) throws IOException {
        TreeMap<String, byte[]> entries = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                entries.put(entry.getName(), in.readAllBytes());
            }
        }
        entries.putAll(changes);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
            }
        }
        return out.toByteArray();
    }

    private static byte[] ods(String content) throws IOException {
        return changed(
                new byte[0],
                Map.of(
                        "a-mimetype", TYPE.getBytes(StandardCharsets.UTF_8),
                        "content.xml", content.getBytes(StandardCharsets.UTF_8)));
    }

    private static String content(String before, String rows) {
        return "<?xml version=\"1.0\"?>" + before
                + "<office:document-content xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
                + " xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\""
                + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\"><office:body><office:spreadsheet>"
                + "<table:table table:name=\"T\">" + rows
                + "</table:table></office:spreadsheet></office:body></office:document-content>";
    }

    private static String cell(String text) {
        return "<table:table-cell office:value-type=\"string\"><text:p>" + text + "</text:p></table:table-cell>";
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard-marks.xlsx", "schlepper.xls", "remorque.ods"})
    @DisplayName("where it is cut off")
    void cut_off(String name) throws IOException {
        byte[] whole = sheet(name);

        assertThat(faults(Arrays.copyOf(whole, whole.length / 2)))
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).containsAnyOf("cut off", "content.xml"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard-marks.xlsx", "schlepper.xls", "remorque.ods"})
    @DisplayName("or is read, but never ends in an exception, where any byte of it is another")
    void any_byte(String name) throws IOException {
        byte[] whole = sheet(name);
        Random random = new Random(7);
        for (int i = 0; i < 20; i++) {
            byte[] harmed = whole.clone();
            harmed[random.nextInt(harmed.length)] ^= (byte) (1 + random.nextInt(255));
            faults(harmed).forEach(fault -> assertThat(fault.found()).isNotBlank());
        }
    }

    @Nested
    @DisplayName("where it unpacks to far more than it is")
    class Packed {

        private final byte[] zeros = new byte[80 * 1024 * 1024];

        @Test
        void as_xlsx() throws IOException {
            byte[] bomb = changed(sheet("orchard-marks.xlsx"), Map.of("xl/worksheets/sheet1.xml", zeros));

            assertThat(faults(bomb))
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.found()).contains("far larger than it looks"));
        }

        @Test
        void as_ods() throws IOException {
            assertThat(faults(changed(sheet("remorque.ods"), Map.of("content.xml", zeros))))
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.found()).contains("unpacks to more than 64 MB"));
        }

        @Test
        void in_one_cell_that_is_repeated_without_end() throws IOException {
            String row =
                    "<table:table-row table:number-rows-repeated=\"1000000000\">" + cell("x") + "</table:table-row>";

            assertThat(faults(ods(content("", row))))
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.found()).contains("more than 200,000 cells"));
        }
    }

    @Test
    @DisplayName("where it has entities of its own, which may hold the files of the machine")
    void entities() throws IOException {
        String own = "<!DOCTYPE d [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>";
        String rows = "<table:table-row>" + cell("Part") + cell("Qty") + "</table:table-row><table:table-row>"
                + cell("&x;") + cell("1") + "</table:table-row>";

        assertThat(faults(ods(content(own, rows)))).hasSize(1);
    }

    @Test
    @DisplayName("where it brings macros")
    void macros() throws IOException {
        byte[] ods = changed(sheet("remorque.ods"), Map.of("Basic/Standard/Module1.xml", new byte[] {1}));
        byte[] types = new String(entry(sheet("orchard-marks.xlsx"), "[Content_Types].xml"), StandardCharsets.UTF_8)
                .replace(
                        "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
                        "application/vnd.ms-excel.sheet.macroEnabled.main+xml")
                .getBytes(StandardCharsets.UTF_8);
        byte[] xlsx = changed(sheet("orchard-marks.xlsx"), Map.of("[Content_Types].xml", types));

        assertThat(faults(ods))
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).contains("macros"));
        assertThat(faults(xlsx))
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).contains("macros"));
    }

    private static byte[] entry(byte[] archive, String name) throws IOException {
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                if (entry.getName().equals(name)) {
                    return in.readAllBytes();
                }
            }
        }
        throw new IllegalArgumentException("No " + name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "PK", "no columns here", "\u0000\u0001\u0002"})
    @DisplayName("where it is no list at all, or told that none is in it")
    void no_list(String text) {
        List<Fault> faults = faults(text.getBytes(StandardCharsets.UTF_8));

        assertThat(faults)
                .allSatisfy(fault -> assertThat(fault.expected()).isNotBlank())
                .isNotEmpty();
    }

    @Nested
    @DisplayName("where it is longer or wider than a list of parts")
    class Large {

        private static final String HEAD = "Part number,Name,Quantity\n";

        private String rows(int many) {
            StringBuilder text = new StringBuilder(HEAD);
            for (int row = 1; row < many; row++) {
                text.append("A-").append(row).append(",Hub,2\n");
            }
            return text.toString();
        }

        @Test
        @Timeout(20)
        void at_once_however_long() {
            assertThat(faults(rows(300_000).getBytes(StandardCharsets.UTF_8)))
                    .singleElement()
                    .satisfies(fault -> {
                        assertThat(fault.found()).isEqualTo("a table of 300000 rows");
                        assertThat(fault.expected()).contains("at most 20000 rows");
                    });
        }

        @Test
        void but_not_for_empty_rows_below_it() {
            String text = rows(3) + ",,\n".repeat(30_000);

            assertThat(faults(text.getBytes(StandardCharsets.UTF_8))).isEmpty();
        }

        @Test
        void with_the_columns_that_it_has() throws IOException {
            String wide = HEAD.strip() + ",x".repeat(1_998) + "\nA-1,Hub,2\n";

            assertThat(faults(wide.getBytes(StandardCharsets.UTF_8)))
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.found()).isEqualTo("a sheet of 2001 columns"));
            String row =
                    "<table:table-row>" + cell("Part") + cell("Qty") + cell("x").repeat(1_999)
                            + "</table:table-row><table:table-row>" + cell("Hub") + cell("4") + "</table:table-row>";
            assertThat(faults(ods(content("", row))))
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.found()).contains("more than 2,000 columns"));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "list.xlsx, %PDF-1.7 x, 'a PDF, though its name says a workbook'",
        "list.csv, %PDF-1.7 x, a PDF",
        "list.xls, <html><table>, 'a page of HTML, though its name says a workbook'",
        "list.xlsx, no columns here, 'neither a workbook, which its name says it is, nor a table of text'",
        "list.csv, no columns here, 'a text without columns, or with a quotation mark that is never closed'"
    })
    @DisplayName("with what it is, where its name says otherwise")
    void other_format(String file, String text, String found) {
        assertThat(Brought.read(file, text.getBytes(StandardCharsets.UTF_8), null, "list", Known.NOTHING)
                        .faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).isEqualTo(found));
    }

    @Test
    @DisplayName("in no way where a text has the name of a workbook, but that is told")
    void misnamed() {
        byte[] text = "Part,Name,Qty\nA-1,Hub,2\nA-2,Rim,3\n".getBytes(StandardCharsets.UTF_8);
        Brought brought =
                ((Outcome.Sound<Brought>) Brought.read("list.xlsx", text, null, "list", Known.NOTHING)).value();

        assertThat(brought.rows()).isEqualTo(2);
        assertThat(brought.notes()).extracting(Doubt::says).anyMatch(note -> note.contains("it is read as CSV"));
    }

    @Test
    @DisplayName("only in that cell, where a value comes from another file")
    void links() throws IOException {
        String row = "<table:table-row>" + cell("Part") + cell("Qty") + "</table:table-row><table:table-row>"
                + cell("Hub")
                + "<table:table-cell office:value-type=\"float\" office:value=\"4\""
                + " table:formula=\"of:=['file:///home/x.ods'#$A.A1]\"><text:p>4</text:p></table:table-cell>"
                + "</table:table-row><table:table-row>" + cell("Rim") + cell("2") + "</table:table-row>";

        List<String> open = ((Outcome.Sound<Brought>)
                        Brought.read("list", ods(content("", row)), null, "list", Known.NOTHING))
                .value()
                .mapping()
                .open();

        assertThat(open)
                .anySatisfy(asked -> assertThat(asked).startsWith("T!B2: ").contains("another file"));
    }
}
