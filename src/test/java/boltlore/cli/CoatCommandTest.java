package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's orders planned together, and what the coating shop wrote down of them. */
class CoatCommandTest {

    private static final String FIRST = "catalog/orders/bl-1001.json";
    private static final String SECOND = "catalog/orders/bl-1002.json";
    private static final String STOPPED = "catalog/orders/bl-1006.json";

    @TempDir
    private Path folder;

    private Path out() {
        return folder.resolve("out");
    }

    private static String flat(Ran ran) {
        return ran.out().replaceAll("\\s+", " ");
    }

    private Path written(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @Nested
    class Coat {

        @Test
        void tells_runs_change_overs_and_loads_with_the_least() {
            Ran ran = boltlore("coat", FIRST, SECOND, "--out", out());
            assertThat(ran.exit()).as("%s", ran).isZero();
            assertThat(ran.out())
                    .contains("Orders BL-1001, BL-1002")
                    .contains("1 sheet written to")
                    .contains("Colour changes")
                    .contains("(at least ");
            assertThat(out().resolve("powder-coat-batch.xlsx")).isRegularFile();
        }

        @Test
        void with_a_first_day_what_comes_late_is_told() {
            Ran ran = boltlore("coat", FIRST, "--start", "2026-06-15", "--out", out());
            assertThat(ran.exit()).as("%s", ran).isZero();
            assertThat(flat(ran)).contains("Check, coat: Coated too late: BL-1001 needs its pieces by 2026-06-12");
        }

        @Test
        void early_enough_nothing_is_told() {
            Ran ran = boltlore("coat", FIRST, "--start", "2026-06-01", "--out", out());
            assertThat(ran.out()).doesNotContain("tell sales");
        }

        @Test
        void a_late_order_says_what_it_moves() {
            Ran ran = boltlore("coat", FIRST, "--late", SECOND, "--out", out());
            assertThat(ran.exit()).as("%s", ran).isZero();
            assertThat(ran.out())
                    .contains("BL-1002")
                    .contains("Loads if replanned")
                    .contains("takes more");
        }

        @Test
        void a_late_order_that_is_planned_already() {
            Ran ran = boltlore("coat", FIRST, "--late", FIRST, "--out", out());
            assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
            assertThat(ran.err()).contains("order BL-1001, which is among the orders already");
        }

        @Test
        void an_order_given_twice() {
            Ran ran = boltlore("coat", FIRST, FIRST, "--out", out());
            assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
            assertThat(ran.err()).contains("Give each order once.");
        }

        @Test
        void a_late_order_that_something_stops() {
            Ran ran = boltlore("coat", FIRST, "--late", STOPPED, "--out", out());
            assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
            assertThat(ran.out()).contains("or not the late one");
        }

        @Test
        void a_day_that_is_none() {
            Ran ran = boltlore("coat", FIRST, "--start", "tomorrow", "--out", out());
            assertThat(ran.exit()).isEqualTo(Exit.USAGE);
            assertThat(ran.err())
                    .contains("'tomorrow', which is not a date; expected such as 2026-06-01")
                    .doesNotContain("java.");
        }

        private Ran withExtra(String extra) throws IOException {
            String order = Files.readString(Path.of(FIRST));
            Path file = written("order.json", order.replace("\"choices\"", "\"extra\": [" + extra + "], \"choices\""));
            return boltlore("coat", file, "--out", out());
        }

        @Test
        void an_extra_bracket_is_in_the_batch_of_the_finish_that_it_is_asked_in() throws IOException {
            Ran ran = withExtra(
                    "{\"part\": \"PV-UT-M\", \"quantity\": 1, \"suppliedBy\": \"us\", \"reason\": \"A spare.\","
                            + " \"finish\": \"grey-satin\"}");
            assertThat(ran.exit()).as("%s", ran).isZero();
            try (var tables = Files.list(out().resolve("csv"))) {
                assertThat(tables.filter(file -> file.toString().contains("-pieces")))
                        .anySatisfy(file -> assertThat(file).content().contains("extra that the customer asks for"));
            }
        }

        @Test
        void a_finish_that_nobody_knows() throws IOException {
            Ran ran = withExtra(
                    "{\"part\": \"PV-UT-M\", \"quantity\": 1, \"suppliedBy\": \"us\", \"reason\": \"A spare.\","
                            + " \"finish\": \"gray-satin\"}");
            assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
            assertThat(ran.err()).contains("/extra/0/finish").contains("'grey-satin'");
        }

        @Test
        void a_finish_for_a_bolt() throws IOException {
            Ran ran = withExtra(
                    "{\"part\": \"FX-M8X25\", \"quantity\": 1, \"suppliedBy\": \"us\", \"reason\": \"A spare.\","
                            + " \"finish\": \"grey-satin\"}");
            assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
            assertThat(ran.err()).contains("does not say how it is coated");
        }

        @Test
        void for_programs() {
            Ran ran = boltlore("coat", FIRST, "--late", SECOND, "--json", "--out", out());
            assertThat(ran.out())
                    .startsWith("{")
                    .contains("\"rounds\"")
                    .contains("\"least\"")
                    .contains("\"late-loads\"")
                    .contains("\"more\"")
                    .contains("\"loads-afresh\"");
        }
    }

    @Nested
    class Film {

        private FilledFilm record() throws IOException {
            return FilledFilm.of(folder.resolve("plan"), SECOND);
        }

        private Ran film(FilledFilm filled, Object... more) throws IOException {
            Path file = filled.in(folder.resolve("film.csv"));
            return boltlore(Stream.of(new Object[] {"film-check", SECOND, "--record", file, "--out", out()}, more)
                    .flatMap(Stream::of)
                    .toArray());
        }

        private FilledFilm good() throws IOException {
            FilledFilm record = record();
            record.all("", "70");
            record.rows().stream()
                    .filter(row -> row.get("finish").startsWith("Primer"))
                    .forEach(row -> record.piece(row.get("part") + " " + row.get("piece"), "140"));
            record.rows().stream()
                    .filter(row -> row.get("finish").startsWith("Off-white"))
                    .forEach(row -> record.piece(row.get("part") + " " + row.get("piece"), "50"));
            return record;
        }

        @Test
        void accepted() throws IOException {
            Ran ran = film(good());
            assertThat(ran.exit()).as("%s", ran).isZero();
            assertThat(flat(ran))
                    .contains("2 2 0 0 accepted")
                    .contains("ISO 2360")
                    .contains("sampling table of a specification for coated aluminium")
                    .contains("workshop's own values, check before use")
                    .doesNotContain("Stop, ")
                    .doesNotContain("Check, ");
            assertThat(out().resolve("coating-record.xlsx")).isRegularFile();
        }

        @Test
        void rejected() throws IOException {
            Ran ran = film(record().piece("PV-UT-M BL-1002 1", "58"));
            assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
            assertThat(flat(ran))
                    .contains(
                            "Stop, film-check: Batch rejected: Batch 1, Black, satin, on aluminium: rejected, 1 read of at"
                                    + " least 2, 1 below limit, 0 allowed.")
                    .contains("Stop, film-check: Mean below minimum: Batch 1, PV-UT-M BL-1002 1: mean 58.0 µm, minimum"
                            + " 60 µm.");
        }

        @Test
        void too_few() throws IOException {
            Ran ran = film(record().piece("PV-UT-M BL-1002 1", "70"));
            assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
            assertThat(flat(ran))
                    .contains("read more, 1 read of at least 2")
                    .contains("Check, film-check: Part not read: Batch 1: no piece of PV-BL-S is read.")
                    .contains("Stop, film-check: Batch not read: Batch 2,");
        }

        @Test
        void powder_out_of_what_is_usual() throws IOException {
            Path powder = written("powder.csv", "Run,Issued (kg)\n1,0.5\n");
            Ran ran = boltlore("film-check", SECOND, "--record", powder, "--out", out());
            assertThat(ran.exit()).isZero();
            assertThat(flat(ran))
                    .contains("Powder above theoretical: Run 1,")
                    .contains("0.5 kg issued, 0.173 kg theoretical");
        }

        @Test
        void text_for_a_reading() throws IOException {
            Ran ran = film(record().piece("PV-BL-S BL-1002 1", "thick"));
            assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
            assertThat(ran.err()).contains("film.csv:2 reading 1: found 'thick'; expected a film in µm");
            assertThat(out()).doesNotExist();
        }

        @Test
        void text_that_would_steer_a_terminal() throws IOException {
            Ran ran = film(record().piece("PV-BL-S BL-1002 1", "70\u001B[31m"));
            assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
            assertThat(ran.err()).contains("found the character U+001B").doesNotContain("\u001B");
        }

        @Test
        @DisplayName("A file that is not there is told as CSV")
        void missing() {
            Ran ran = boltlore("film-check", SECOND, "--record", folder.resolve("none.csv"), "--out", out());
            assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
            assertThat(ran.err()).contains("nothing of that name").contains("a CSV file");
        }

        @Test
        void for_programs() throws IOException {
            assertThat(film(record().piece("PV-UT-M BL-1002 1", "70"), "--json").out())
                    .startsWith("{")
                    .contains("\"decision\": \"read more\"");
        }
    }
}
