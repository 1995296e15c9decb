package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** BL-1001 has ten pieces in deep green, among them PV-CA-LL; BL-1002 has its own in another finish. */
@DisplayName("A film record")
class FilmRecordTest {

    private static final String GREEN = "Deep green, gloss";

    @TempDir
    private Path folder;

    private Path orders;
    private Path first;
    private Path second;

    @BeforeEach
    void two_orders() throws IOException {
        orders = Files.createDirectories(folder.resolve("orders"));
        first = Files.copy(Path.of("catalog/orders/bl-1001.json"), orders.resolve("bl-1001.json"));
        second = Files.copy(Path.of("catalog/orders/bl-1002.json"), orders.resolve("bl-1002.json"));
    }

    private Ran judged(Object... records) {
        Object[] words = new Object[4 + 2 * records.length];
        words[0] = "film-check";
        words[1] = orders;
        words[2] = "--out";
        words[3] = folder.resolve("judged");
        for (int i = 0; i < records.length; i++) {
            words[4 + 2 * i] = "--record";
            words[5 + 2 * i] = records[i];
        }
        return boltlore(words);
    }

    private FilledFilm plan() throws IOException {
        return FilledFilm.of(folder.resolve("plan"), orders);
    }

    private Path filled(FilledFilm film) throws IOException {
        return film.in(folder.resolve("film.csv"));
    }

    private FilledFilm good() throws IOException {
        FilledFilm film = plan();
        for (var row : film.rows()) {
            String finish = row.get("finish");
            String um = finish.startsWith("Primer") ? "140" : finish.startsWith("Off-white") ? "50" : "70";
            film.piece(row.get("part") + " " + row.get("piece"), um);
        }
        return film;
    }

    private static String flat(Ran ran) {
        return (ran.out() + ran.err()).replaceAll("\\s+", " ");
    }

    private void changed(Path order, String from, String to) throws IOException {
        String text = Files.readString(order);
        assertThat(text).contains(from);
        Files.writeString(order, text.replace(from, to));
    }

    @Test
    @DisplayName("comes with a row for each piece, so that only readings are typed, and is accepted")
    void all_good() throws IOException {
        FilledFilm film = good();
        assertThat(film.rows())
                .hasSizeGreaterThan(60)
                .allSatisfy(row -> assertThat(row.get("piece")).matches("BL-100[12] [1-9][0-9]*"));
        Ran ran = judged(filled(film));
        assertThat(ran.exit()).as(ran.toString()).isZero();
        assertThat(flat(ran)).doesNotContain("Stop, ").doesNotContain("Check, ").doesNotContain("Note, ");
    }

    @Test
    @DisplayName("as JSON holds the same pieces, codes and runs, and is judged when it is filled in")
    void as_json() throws IOException {
        plan();
        Path record = folder.resolve("plan/json/powder-coat-batch-record.json");
        assertThat(flat(judged(record))).contains("nothing filled in");
        String filled = Files.readString(record).replaceFirst("\"um\": \\[]", "\"um\": [70, 71, 69, \"70.5\", 70]");
        Files.writeString(record, filled);
        Ran ran = judged(record);
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(flat(ran)).contains("read more, 1 read of at least").doesNotContain("is not asked for");
    }

    @Test
    @DisplayName("of a colour that was changed since is told as of another coat and not accepted; all else is judged")
    void changed_colour() throws IOException {
        Path record = filled(good());
        changed(first, "\"colour\": \"green\"", "\"colour\": \"grey\"");
        Ran ran = judged(record);
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(flat(ran))
                .contains("Stop, film-check: Other coat asked: Order BL-1001: 10 pieces were read in " + GREEN
                        + " and are now asked for in Grey, satin: PV-CA-LL BL-1001 1,")
                .contains("Stop, film-check: Pieces in no record: Batch ")
                .contains("Grey, satin: 10 pieces came to it after the record was written")
                .doesNotContain("pieces not asked")
                .doesNotContain("Did you mean");
    }

    @Test
    @DisplayName("of an order that was withdrawn is told, once, and the pieces of the others are judged")
    void withdrawn_order() throws IOException {
        Path record = filled(good());
        Files.delete(second);
        Ran ran = judged(record);
        assertThat(ran.exit()).as(ran.toString()).isZero();
        assertThat(flat(ran))
                .contains("Check, film-check: Pieces not asked: Order BL-1002: ")
                .contains("Give the order's file too")
                .contains("Note, film-check: Batch changed since: Batch 1,")
                .doesNotContain("Stop, ");
    }

    @Test
    @DisplayName("of an order that is stopped now says so")
    void stopped_order() throws IOException {
        Path record = filled(good());
        Files.delete(second);
        Files.copy(Path.of("catalog/orders/bl-1006.json"), orders.resolve("bl-1006.json"));
        Ran ran = judged(record);
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(flat(ran)).contains("Stop, film-check: Order stopped: Order BL-1006, due ");
    }

    @Test
    @DisplayName("of film limits that were changed since is told, and not judged by the new ones")
    void changed_limits() throws IOException {
        Path record = filled(good());
        Path stricter = ChangedCatalogue.in(
                Files.createDirectories(folder.resolve("stricter")),
                "finishes.json",
                "\"filmUm\": {\"min\": 60, \"target\": 75, \"max\": 80}, \"cure\": {\"metalC\": 190, \"minutes\": 12},"
                        + " \"utilisationPercent\": 60}], \"where\": {\"oven\": \"own\"}},\n"
                        + "  {\"finish\": \"cream-gloss\"",
                "\"filmUm\": {\"min\": 65, \"target\": 75, \"max\": 80}, \"cure\": {\"metalC\": 190, \"minutes\": 12},"
                        + " \"utilisationPercent\": 60}], \"where\": {\"oven\": \"own\"}},\n"
                        + "  {\"finish\": \"cream-gloss\"");
        Ran ran = boltlore(
                "film-check", orders, "--catalogue", stricter, "--record", record, "--out", folder.resolve("judged"));
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(flat(ran))
                .contains("Limits changed since: Order BL-1001: the film limits of " + GREEN + " have changed");
    }

    @Test
    @DisplayName("names each piece to be reworked, lists it for the next plan, and takes its second reading")
    void coated_again() throws IOException {
        FilledFilm film = good().put("PV-CA-LL BL-1001 1", "look", "runs").put("PV-CA-LL BL-1001 1", "good", "no");
        Path record = filled(film);
        Ran bad = judged(record);
        assertThat(bad.exit()).isEqualTo(Exit.STOPPED);
        assertThat(flat(bad))
                .contains("Rejected by eye: Batch 5, PV-CA-LL BL-1001 1: rejected by eye, runs. Rework.")
                .contains("1 piece is to be reworked and read again: PV-CA-LL BL-1001 1.");
        Path list = folder.resolve("judged/csv/coating-record-again.csv");

        FilledFilm again = FilledFilm.of(folder.resolve("again"), orders, "--again", list);

        assertThat(again.rows())
                .singleElement()
                .satisfies(row -> assertThat(row)
                        .containsEntry("piece", "BL-1001 1")
                        .containsEntry("finish", GREEN)
                        .containsEntry("coating", "2"));
        Path second = again.all("", "72").in(folder.resolve("again.csv"));
        Ran good = judged(record, second);
        assertThat(good.exit()).as(good.toString()).isZero();
        assertThat(folder.resolve("judged/csv/coating-record-pieces.csv"))
                .content()
                .contains("PV-CA-LL,BL-1001 1,1,")
                .contains("replaced by a later reading")
                .contains("PV-CA-LL,BL-1001 1,2,");
        assertThat(list).doesNotExist();
    }

    @Test
    @DisplayName("of pieces to be coated again is made beside that of the first coating, which stays")
    void again_beside_the_first() throws IOException {
        Path plan = folder.resolve("plan");
        good();
        Path film = plan.resolve("csv/powder-coat-batch-film.csv");
        String before = Files.readString(film);
        Path list = Files.writeString(folder.resolve("again.csv"), "part,piece,coating\nPV-CA-LL,BL-1001 1,2\n");

        boltlore("coat", orders, "--again", list, "--out", plan);

        assertThat(film).hasContent(before);
        assertThat(plan.resolve("powder-coat-batch.xlsx")).exists();
        assertThat(plan.resolve("again-2/csv/powder-coat-batch-film.csv")).exists();
        Files.writeString(list, "part,piece,coating\nPV-CA-LL,BL-1001 1,3\n");
        boltlore("coat", orders, "--again", list, "--out", plan);
        assertThat(plan.resolve("again-2/powder-coat-batch.xlsx")).exists();
        assertThat(plan.resolve("again-3/powder-coat-batch.xlsx")).exists();
    }

    @Test
    @DisplayName("given twice is refused in one sentence, whatever the files are called")
    void twice() throws IOException {
        Path record = filled(good());
        Path copy = Files.copy(record, folder.resolve("copy.csv"));
        for (Path second : new Path[] {record, copy}) {
            Ran ran = judged(record, second);
            assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
            assertThat(flat(ran))
                    .contains("found the same entries as in " + record)
                    .containsOnlyOnce("found ");
        }
    }

    @Test
    @DisplayName("of pieces to be coated again that no order has is refused by name")
    void again_of_nothing() throws IOException {
        Path list = Files.writeString(folder.resolve("again.csv"), "part,piece\nPV-CA-LL,BL-1001 9\n");
        Ran ran = boltlore("coat", orders, "--again", list, "--out", folder.resolve("plan"));
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(flat(ran)).contains("--again: found piece 'PV-CA-LL BL-1001 9'; expected a piece that these orders");
    }

    @Test
    @DisplayName("whose list of pieces to be coated again holds none is refused: it must not coat everything anew")
    void again_of_no_piece() throws IOException {
        Path list = Files.writeString(folder.resolve("again.csv"), "part,piece\n");

        Ran ran = boltlore("coat", orders, "--again", list, "--out", folder.resolve("plan"));

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(flat(ran)).contains("again.csv: found headings without a row");
        assertThat(folder.resolve("plan")).doesNotExist();
    }

    @Test
    @DisplayName("whose list says two things of one piece is refused, and one that says the same twice is not")
    void again_of_one_piece_in_two_ways() throws IOException {
        String row = "part,piece,coating\nPV-CA-LL,BL-1001 1,2\n";
        Path list =
                Files.writeString(folder.resolve("again.csv"), row + "PV-CA-LL,BL-1001 1,3\nPV-CA-LL,BL-1001 1,2,9\n");

        Ran ran = boltlore("coat", orders, "--again", list, "--out", folder.resolve("plan"));

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(flat(ran))
                .contains("again.csv:3 coating: found 3 for PV-CA-LL BL-1001 1, and 2 in a row above")
                .contains("again.csv:4: found more cells than headings");
        Files.writeString(list, row + "PV-CA-LL,BL-1001 1,2\n");
        assertThat(boltlore("coat", orders, "--again", list, "--out", folder.resolve("plan"))
                        .exit())
                .isZero();
    }

    @Test
    @DisplayName("of film far over its maximum stops, and a slip of typing is asked back")
    void above_maximum() throws IOException {
        FilledFilm film = good().piece("PV-CA-LL BL-1001 1", "404").put("PV-CR-L BL-1001 1", "reading 3 (µm)", "680");
        Ran ran = judged(filled(film));
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(flat(ran))
                .contains(
                        "Stop, film-check: Mean above maximum: Batch 5, PV-CA-LL BL-1001 1: mean 404.0 µm, maximum 80 µm.")
                .contains("Check, film-check: Slip of typing: Batch 5, PV-CR-L BL-1001 1: a reading of 680 µm");
    }

    @Test
    @DisplayName("of powder goes by the code of its run, and is not judged where the run has changed")
    void powder() throws IOException {
        plan();
        Path use = folder.resolve("plan/csv/powder-coat-batch-powder-use.csv");
        String issued = Files.readString(use).replaceFirst(",to waste,([0-9.]+),,", ",to waste,$1,0.300,");
        Files.writeString(use, issued);
        assertThat(flat(judged(use))).doesNotContain("run changed since").contains("Powder");
        Files.delete(second);
        assertThat(flat(judged(use)))
                .contains("Check, film-check: Run changed since: Run 1: 0.300 kg were weighed out");
    }
}
