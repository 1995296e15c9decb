package boltlore.proof;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.choices.Choices;
import boltlore.demo.Barrow;
import boltlore.faults.Outcome;
import boltlore.findings.Severity;
import boltlore.logic.Deadline;
import boltlore.oracle.Agreement;
import boltlore.oracle.Oracle;
import boltlore.oracle.Variants;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.json.OrderReader;
import boltlore.proof.revision.PartChange;
import boltlore.proof.revision.Revision;
import boltlore.proof.revision.Revisions;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A small family whose 250 W motor gives way to another: every day has exactly one, or the proof names the day. */
@DisplayName("Where a line gives way to another")
class EffectivityTest {

    private static final Path KIT = Path.of("families/tin-barrow/kit/all.json");
    private static final Path PARTS = Path.of("parts/barrow.json");
    private static final String OLD =
            "{\"line\": \"hub-motor-250\", \"part\": \"TB-HUB-250\", \"quantity\": \"1\", \"when\": {\"motor\": \"250-w\"}";
    private static final String NEW =
            "{\"line\": \"hub-motor-250-b\", \"part\": \"TB-HUB-250B\", \"quantity\": \"1\", \"when\": {\"motor\": \"250-w\"}";

    @TempDir
    private Path folder;

    @BeforeEach
    void write() throws IOException {
        Barrow.write(folder);
        change(
                PARTS,
                "{\"part\": \"TB-HUB-500\"",
                "{\"part\": \"TB-HUB-250B\", \"revision\": \"A\", \"name\": \"Hub motor, 250 W, quieter\", \"unit\": \"each\","
                        + " \"source\": \"buy\", \"supplier\": \"Tarnholt Drives\", \"orderCode\": \"TD-9004\", \"leadDays\": 21,"
                        + " \"cost\": \"90.00\", \"massKg\": \"3.1\", \"bin\": \"M-90-01-A-04\"},\n {\"part\": \"TB-HUB-500\"");
    }

    private void change(Path file, String from, String to) throws IOException {
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }

    private Catalogue giveWay(String oldEnds, String newEnds) throws IOException {
        change(KIT, OLD + "}", OLD + oldEnds + "},\n   " + NEW + newEnds + "}");
        return read(folder);
    }

    private static Catalogue read(Path folder) {
        Outcome<Catalogue> outcome = CatalogueReader.read(folder);
        if (outcome instanceof Outcome.Sound<Catalogue> sound) {
            return sound.value();
        }
        throw new AssertionError(outcome.faults().toString());
    }

    private static FamilyProof prove(Catalogue catalogue) {
        return DemoFamily.prove(catalogue, "tin-barrow");
    }

    private static List<String> defects(Catalogue catalogue) {
        return prove(catalogue)
                .defects()
                .filter(defect -> defect.statement().kind().severity() != Severity.NOTE)
                .map(defect -> defect.statement().title() + " " + orders(catalogue, defect))
                .toList();
    }

    /** The day or number of the order that shows it. */
    private static String orders(Catalogue catalogue, Answer.Defect defect) {
        Order order = Witnesses.complete(catalogue, "x", defect.witness().orElseThrow(), new LeftOut.Undecided(), "");
        return order.placed() + " " + order.chassis();
    }

    @Test
    void on_the_next_day_every_order_has_exactly_one() throws IOException {
        Catalogue catalogue = giveWay(", \"until\": \"2026-04-30\"", ", \"from\": \"2026-05-01\"");

        assertThat(defects(catalogue)).isEmpty();
        assertThat(prove(catalogue).orders().toString()).contains(String.valueOf(2 * 3 * 6));
    }

    @Test
    void a_day_too_late_the_day_between_has_none() throws IOException {
        Catalogue catalogue = giveWay(", \"until\": \"2026-04-30\"", ", \"from\": \"2026-05-02\"");

        assertThat(defects(catalogue)).containsExactly("required part missing: hub-motor 2026-05-01 ");
    }

    @Test
    void a_day_too_early_that_day_has_two() throws IOException {
        Catalogue catalogue = giveWay(", \"until\": \"2026-05-01\"", ", \"from\": \"2026-05-01\"");

        assertThat(defects(catalogue))
                .hasSize(1)
                .first()
                .asString()
                .contains("hub-motor")
                .endsWith("2026-05-01 ");
    }

    @Test
    void with_the_next_chassis_number_every_order_has_exactly_one() throws IOException {
        assertThat(defects(giveWay(", \"untilChassis\": 1199", ", \"fromChassis\": 1200")))
                .isEmpty();
    }

    @Test
    void a_number_too_late_the_number_between_has_none() throws IOException {
        assertThat(defects(giveWay(", \"untilChassis\": 1199", ", \"fromChassis\": 1201")))
                .containsExactly("required part missing: hub-motor null 1200");
    }

    @Test
    void by_day_and_by_number_what_lies_in_neither_has_none_and_what_lies_in_both_has_two() throws IOException {
        assertThat(defects(giveWay(", \"until\": \"2026-04-30\"", ", \"fromChassis\": 1200")))
                .containsExactly(
                        "two alternatives selected: hub-motor (hub-motor-250, hub-motor-250-b) 2026-04-30 1200",
                        "required part missing: hub-motor 2026-05-01 1199");
    }

    @Test
    void rules_formulas_and_the_calendar_say_the_same_of_every_order() throws IOException {
        Catalogue catalogue = giveWay(
                ", \"until\": \"2026-05-31\", \"untilChassis\": 1300",
                ", \"from\": \"2026-05-01\", \"fromChassis\": 1200");
        Family family = catalogue.family("tin-barrow");
        List<Choices> all = new Variants(family).all();
        SaidOfKits formulas = new SaidOfKits(KitView.of(catalogue, family, false, Deadline.NONE), false);
        Oracle oracle = new Oracle(catalogue);
        Agreement agreement = new Agreement(catalogue);

        assertThat(all).hasSize(3 * 3 * 3 * 6);
        for (Choices order : all) {
            agreement.on(order);
            assertThat(formulas.of(order)).isEqualTo(Said.byRules(oracle.resolve(order, new LeftOut.Undecided())));
        }
    }

    @Nested
    @DisplayName("an order")
    class OfAnOrder {

        private List<String> lines(Catalogue catalogue, String placed) throws IOException {
            String order = Files.readString(folder.resolve("orders/tb-1.json"))
                    .replace("\"placed\": \"2026-03-02\",", placed)
                    .replace("\"motor\": \"500-w\", \"lamp\": \"yes\"", "\"motor\": \"250-w\", \"lamp\": \"no\"");
            Outcome<Order> read = OrderReader.parse("tb-1.json", order.getBytes(StandardCharsets.UTF_8), catalogue);
            assertThat(read.faults()).isEmpty();
            Choices choices = ((Outcome.Sound<Order>) read).value().choices();
            return Agreement.resolved(new Agreement(catalogue).resolver().resolve(choices, new LeftOut.Undecided()))
                    .kit()
                    .lines()
                    .stream()
                    .map(line -> line.text())
                    .filter(line -> line.startsWith("hub-motor"))
                    .toList();
        }

        @Test
        void gets_the_line_of_its_day() throws IOException {
            Catalogue catalogue = giveWay(", \"until\": \"2026-04-30\"", ", \"from\": \"2026-05-01\"");

            assertThat(lines(catalogue, "\"placed\": \"2026-04-30\",")).containsExactly("hub-motor-250");
            assertThat(lines(catalogue, "\"placed\": \"2026-05-01\",")).containsExactly("hub-motor-250-b");
        }
    }

    @Nested
    @DisplayName("a later revision of the catalogue")
    class Against {

        @TempDir
        private Path earlier;

        /** The earlier one knows no day: it is cut at those of the later one, so only the orders from that day on change. */
        @Test
        void changes_the_orders_from_that_day_on_and_its_note_says_why() throws IOException {
            Barrow.write(earlier);
            giveWay(
                    ", \"until\": \"2026-04-30\"",
                    ", \"from\": \"2026-05-01\", \"changes\": [{\"date\": \"2026-03-20\", \"says\": \"Quieter motor.\","
                            + " \"because\": \"Neighbours complained.\", \"approvedBy\": \"R. Tarn\"}]");
            CatalogueReader.Together both = together();

            Revision revision = Revisions.compare(both.before(), both.after(), "tin-barrow", Deadline.NONE);

            assertThat(revision.parts())
                    .extracting(change -> change.part().text())
                    .containsExactly("TB-HUB-250", "TB-HUB-250B");
            assertThat(revision.cases().orElseThrow()).hasToString("[motor=250-w, placed=from-2026-05-01]");
            for (PartChange change : revision.parts()) {
                assertThat(revision.notes().get(change.part()))
                        .extracting(note -> note.of() + ": " + note.change().says())
                        .containsExactly("hub-motor-250-b: Quieter motor.");
            }
        }

        @Test
        void whose_difference_nobody_has_written_down_has_no_note() throws IOException {
            Barrow.write(earlier);
            giveWay(", \"until\": \"2026-04-30\"", ", \"from\": \"2026-05-01\"");
            CatalogueReader.Together both = together();

            Revision revision = Revisions.compare(both.before(), both.after(), "tin-barrow", Deadline.NONE);

            assertThat(revision.notes().values()).hasSize(2).allMatch(List::isEmpty);
        }

        private CatalogueReader.Together together() {
            if (CatalogueReader.readTogether(earlier, folder)
                    instanceof Outcome.Sound<CatalogueReader.Together> sound) {
                return sound.value();
            }
            throw new AssertionError(
                    CatalogueReader.readTogether(earlier, folder).faults().toString());
        }
    }
}
