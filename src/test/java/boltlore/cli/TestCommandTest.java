package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Test sheets and empty records of the demo's kits. */
class TestCommandTest {

    private static final String FIRST = "catalog/orders/bl-1001.json";
    private static final String OTHER_FAMILY = "catalog/orders/bl-2001.json";
    private static final String NO_AIR = "catalog/orders/bl-1002.json";
    private static final String STOPPED = "catalog/orders/bl-1006.json";

    @TempDir
    private Path folder;

    @Test
    void writes_sheet_papers_and_empty_records_for_each_order() {
        Ran ran = boltlore("test", FIRST, OTHER_FAMILY, "--out", folder);
        assertThat(ran.exit()).as("%s", ran).isZero();
        assertThat(ran.out()).contains("4 sheets written to ");
        assertThat(folder.resolve("BL-1001/end-of-line-test.xlsx")).isRegularFile();
        assertThat(folder.resolve("BL-1001/labels-and-manual.xlsx")).isRegularFile();
        assertThat(folder.resolve("BL-2001/csv/end-of-line-test-record.csv")).isRegularFile();
        assertThat(folder.resolve("BL-2001/json/end-of-line-test-record.json")).isRegularFile();
    }

    @Test
    void tests_of_the_air_conditioning_stand_on_the_sheet_only_where_it_is_fitted() throws IOException {
        boltlore("test", FIRST, NO_AIR, "--out", folder);
        assertThat(Files.readString(folder.resolve("BL-1001/csv/end-of-line-test-record.csv")))
                .contains("refrigerant-vacuum.condenser", "bonding.compressor", "isolation-export.export-socket");
        assertThat(Files.readString(folder.resolve("BL-1002/csv/end-of-line-test-record.csv")))
                .doesNotContain("refrigerant", "condenser", "bonding.compressor,", "export-socket")
                .contains("heater-air.heater-unit");
    }

    @Test
    void a_record_that_somebody_has_begun_to_fill_in_is_not_written_over() throws IOException {
        boltlore("test", FIRST, "--out", folder);
        assertThat(boltlore("test", FIRST, "--out", folder).exit()).isZero();
        Path record = folder.resolve("BL-1001/json/end-of-line-test-record.json");
        Files.writeString(record, Files.readString(record).replaceFirst("\"value\": \"\"", "\"value\": \"0.25\""));
        String filled = Files.readString(record);
        Ran ran = boltlore("test", FIRST, "--out", folder);
        assertThat(ran.exit()).isZero();
        assertThat(ran.err().replaceAll("\\s+", " "))
                .contains("end-of-line-test-record.json was changed after it was written: it stays as it is.");
        assertThat(record).hasContent(filled);
    }

    @Test
    void an_order_that_something_stops_gets_no_sheet() {
        Ran ran = boltlore("test", STOPPED, FIRST, "--out", folder);
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(folder.resolve("BL-1006")).doesNotExist();
        assertThat(folder.resolve("BL-1001")).isDirectory();
    }

    @Test
    void the_same_bytes_on_every_run() {
        boltlore("test", FIRST, "--out", folder.resolve("one"));
        boltlore("test", FIRST, "--out", folder.resolve("other"));
        for (String file : new String[] {"end-of-line-test.xlsx", "labels-and-manual.xlsx"}) {
            assertThat(folder.resolve("other/BL-1001").resolve(file))
                    .hasSameBinaryContentAs(folder.resolve("one/BL-1001").resolve(file));
        }
    }
}
