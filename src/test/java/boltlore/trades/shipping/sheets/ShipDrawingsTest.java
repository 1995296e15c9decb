package boltlore.trades.shipping.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.measure.Wording;
import boltlore.report.Phrases;
import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Point;
import boltlore.trades.shipping.Shipment;
import boltlore.trades.shipping.ShippedKit;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Crates and labels are drawn")
class ShipDrawingsTest {

    private static final double TOLERANCE_MM = 0.001;

    private static List<String> lettering(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Mark.Lettering.class::isInstance)
                .map(Mark.Lettering.class::cast)
                .map(Mark.Lettering::text)
                .toList();
    }

    private static void within(Drawing drawing) {
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Line line) {
                assertThat(line.points()).allSatisfy(point -> within(point, drawing));
            } else if (mark instanceof Mark.Lettering words) {
                double half = words.centred() ? words.widthMm() / 2 : 0;
                within(new Point(words.at().xMm() - half, words.at().yMm()), drawing);
                within(
                        new Point(
                                words.at().xMm() - half + words.widthMm(),
                                words.at().yMm()),
                        drawing);
            }
        }
    }

    private static void within(Point point, Drawing drawing) {
        assertThat(point.xMm()).isBetween(-TOLERANCE_MM, drawing.widthMm() + TOLERANCE_MM);
        assertThat(point.yMm()).isBetween(-TOLERANCE_MM, drawing.heightMm() + TOLERANCE_MM);
    }

    private static Drawing label(Shipment shipment, int crate, String language) {
        Phrases phrases = Phrases.of(ShipSheet.class, "packing", language);
        LoadWords words = new LoadWords(shipment.workshop(), shipment.shipping(), language, phrases);
        return LabelDrawing.of(shipment.crates().get(crate), shipment, words);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 10, 41})
    void crates_stand_within_the_drawing_with_their_sizes_and_masses(int weights) {
        Drawing drawing = CratesDrawing.of(
                new ShippedKit().part("WEIGHT", "100", weights).shipment().crates());
        within(drawing);
        assertThat(lettering(drawing)).hasSize(4 * weights).contains("1", "1040", "740", "122 kg");
    }

    @Test
    void crates_are_drawn_to_one_scale() {
        Drawing drawing = CratesDrawing.of(new ShippedKit()
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
        within(label(shipment, 0, language));
        within(label(shipment, 1, language));
    }

    @Test
    void a_label_says_order_number_mass_who_lifts_and_lithium() {
        Shipment shipment = new ShippedKit()
                .part("A", "150", 1)
                .battery("PACK", "20", "3000")
                .shipment();
        assertThat(lettering(label(shipment, 0, Wording.ENGLISH)))
                .contains("BL-1", "Crate 1 of 2", "Gross 172 kg", "Pallet truck or hoist only", "THIS WAY UP")
                .anySatisfy(words -> assertThat(words).contains("CENTRE OF GRAVITY"))
                .noneSatisfy(words -> assertThat(words).contains("LITHIUM"));
        assertThat(lettering(label(shipment, 1, Wording.ENGLISH)))
                .contains(
                        "Gross 28 kg",
                        "Two people lift it",
                        "UN 3480 – LITHIUM ION BATTERIES",
                        "KEEP DRY – DO NOT STACK");
    }
}
