package boltlore.trades.shipping;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.measure.Party;
import boltlore.measure.Wording;
import boltlore.report.drawing.Clearances;
import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Mark;
import boltlore.sketch.PartSketch;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Crates and labels are drawn")
class ShipDrawingsTest {

    private static List<String> lettering(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Mark.Lettering.class::isInstance)
                .map(Mark.Lettering.class::cast)
                .map(Mark.Lettering::text)
                .toList();
    }

    private static Drawing label(Shipment shipment, int crate, String language) {
        return LabelDrawing.draw(List.of(shipment.crates().get(crate)), shipment, LoadWords.of(shipment, language));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 10, 41})
    void crates_stand_within_the_drawing_with_their_sizes_and_masses(int weights) {
        Drawing drawing = CratesDrawing.draw(
                new ShippedKit().part("WEIGHT", "100", weights).shipment().crates());
        Clearances.assertLegible(drawing);
        assertThat(lettering(drawing)).hasSize(4 * weights + 1).contains("1", "1040", "740", "122 kg");
    }

    @Test
    void crates_are_drawn_to_one_scale() {
        Drawing drawing = CratesDrawing.draw(new ShippedKit()
                .part("A", "5", 1)
                .battery("PACK", "20", "3000")
                .shipment()
                .crates());
        List<Double> widths = drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Line line && line.penMm() == Mark.THICK_MM)
                .map(Mark.Line.class::cast)
                .map(line -> line.points().get(1).xMm() - line.points().get(0).xMm())
                .toList();
        assertThat(widths).containsExactly(1040 / 40.0, 530 / 40.0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "fr"})
    void labels_keep_their_words_within_the_frame_and_off_the_arrows(String language) {
        Shipment shipment =
                new ShippedKit().part("A", "5", 1).battery("PACK", "20", "3000").shipment();
        Clearances.assertLegible(label(shipment, 0, language));
        Clearances.assertLegible(label(shipment, 1, language));
    }

    /** ADR 5.2.1.1: at least 12 mm; a draft is printed 8 per cent smaller, for the words above it. */
    @Test
    void the_un_number_is_high_enough_on_a_draft_too() {
        Shipment shipment =
                new ShippedKit().part("A", "5", 1).battery("PACK", "20", "3000").shipment();
        assertThat(label(shipment, 1, "en").marks())
                .filteredOn(mark ->
                        mark instanceof Mark.Lettering words && words.text().startsWith("UN "))
                .singleElement()
                .satisfies(mark ->
                        assertThat(((Mark.Lettering) mark).heightMm() * 0.92).isGreaterThanOrEqualTo(12));
    }

    @Test
    void a_label_keeps_small_letters_and_accents() {
        Shipment shipment =
                new ShippedKit().part("A", "5", 1).battery("PACK", "20", "3000").shipment();
        assertThat(lettering(label(shipment, 1, "de")))
                .contains("Brutto 28 kg")
                .anySatisfy(words -> assertThat(words).contains("Nässe schützen"));
    }

    @ParameterizedTest
    @CsvSource(
            value = {"en|keep away and call 1", "de|Abstand halten und anrufen: 1", "fr|éloigner et appeler le 1"},
            delimiter = '|')
    void a_label_of_dangerous_goods_says_whom_to_call(String language, String call) {
        Shipment shipment =
                new ShippedKit().part("A", "5", 1).battery("PACK", "20", "3000").shipment();
        assertThat(lettering(label(shipment, 1, language)))
                .satisfies(words -> assertThat(String.join(" ", words)).endsWith(call + " BL-1/2/2"));
        assertThat(lettering(label(shipment, 0, language)))
                .satisfies(words -> assertThat(String.join(" ", words)).doesNotContain(call));
    }

    @Test
    void a_label_says_order_number_mass_who_lifts_and_lithium() {
        Shipment shipment = new ShippedKit()
                .part("A", "150", 1)
                .battery("PACK", "20", "3000")
                .shipment();
        assertThat(lettering(label(shipment, 0, Wording.ENGLISH)))
                .contains(
                        "BL-1 – Crate 1 of 2", "Gross 172 kg", "This way up", "BL-1/1/2", "Pallet truck or hoist only")
                .anySatisfy(words -> assertThat(words).contains("Centre of gravity"))
                .noneSatisfy(words -> assertThat(words).contains("Lithium"));
        assertThat(lettering(label(shipment, 1, Wording.ENGLISH)))
                .contains("Gross 28 kg", "UN 3480", "Keep away from rain – Do not stack")
                .contains("Two people lift it")
                .anySatisfy(words -> assertThat(words).startsWith("Lithium ion batteries"));
    }

    @ParameterizedTest
    @CsvSource({"UN 2800, en, Lead-acid batteries", "UN 2794, de, Bleibatterien", "UN 2800, fr, Batteries au plomb"})
    void a_label_says_that_lead_acid_batteries_are_inside_and_stand_upright(String un, String language, String says) {
        PartSketch battery =
                PartSketch.bought("LEAD").massKg("19").transport(un).customs("8507.10", "HU");
        Shipment shipment =
                new ShippedKit().part("A", "5", 1).part(battery, "", 1).shipment();
        Clearances.assertLegible(label(shipment, 1, language));
        assertThat(lettering(label(shipment, 1, language)))
                .contains(un)
                .anySatisfy(words -> assertThat(words).startsWith(says));
        assertThat(lettering(label(shipment, 0, language)))
                .noneSatisfy(words -> assertThat(words).startsWith(says));
    }

    /** ADR 5.2.1.1, as published: the UN number is at least 12 mm high on packages of more than 30 kg. */
    @Test
    void a_label_has_its_un_number_large_enough() {
        Shipment shipment =
                new ShippedKit().part("A", "5", 1).battery("PACK", "20", "3000").shipment();
        assertThat(label(shipment, 1, "en").marks())
                .filteredOn(mark -> mark instanceof Mark.Lettering lettering
                        && lettering.text().equals("UN 3480"))
                .allSatisfy(
                        mark -> assertThat(((Mark.Lettering) mark).heightMm()).isGreaterThanOrEqualTo(12))
                .hasSize(1);
    }

    @Test
    void all_lines_of_an_address_are_lettered_alike() {
        Party yard = new Party("Bakery in the Lane", List.of("Row 7", "Placeton"), "FR");
        Shipment shipment = new ShippedKit().part("A", "5", 1).consignee(yard).shipment();
        assertThat(label(shipment, 0, "fr").marks().stream()
                        .filter(mark -> mark instanceof Mark.Lettering words
                                && List.of(yard.name(), "Row 7", "Placeton").contains(words.text()))
                        .map(mark -> ((Mark.Lettering) mark).heightMm())
                        .distinct())
                .hasSize(1);
    }

    @Test
    void a_label_names_the_consignee_and_asks_for_an_address_where_there_is_none() {
        Party consignee = new Party("Some Yard", List.of("Row 7", "Placeton"), "FR");
        Shipment shipment = new ShippedKit().part("A", "5", 1).shipment();
        assertThat(lettering(label(shipment, 0, "en"))).contains("Address to be written in");
        Shipment addressed =
                new ShippedKit().part("A", "5", 1).consignee(consignee).shipment();
        assertThat(lettering(label(addressed, 0, "fr")))
                .contains("Some Yard", "Row 7", "Placeton", "France (FR)")
                .doesNotContain("Adresse à inscrire");
        Clearances.assertLegible(label(addressed, 0, "fr"));
    }
}
