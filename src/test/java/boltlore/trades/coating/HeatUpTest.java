package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Oven;
import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The oven minutes of a load")
class HeatUpTest {

    private static Oven oven(String minPerMm) {
        Oven plain = SampleShop.oven("3");
        return new Oven(
                plain.name(),
                plain.says(),
                plain.inside(),
                plain.hooks(),
                plain.loadKg(),
                plain.loadAreaM2(),
                plain.fillPercent(),
                plain.sectionRatio(),
                30,
                0,
                plain.tooLarge(),
                new BigDecimal(minPerMm));
    }

    private static BatchRow row(String thickestMm) {
        CoatingSpec flat = SampleShop.coat("0.5");
        CoatingSpec coat = new CoatingSpec(
                flat.role(),
                flat.finish(),
                flat.areaM2(),
                flat.thinnestMm(),
                new BigDecimal(thickestMm),
                flat.features(),
                flat.hangPoints(),
                flat.envelope());
        Part part = SampleShop.part("P-" + thickestMm, coat);
        return new BatchRow(part, coat, SampleShop.OWN_BLACK, BigDecimal.ONE, CoatingStatus.NEEDED, List.of());
    }

    private static int minutes(Oven oven, String... thickest) {
        List<BatchRow> rows = List.of(thickest).stream().map(HeatUpTest::row).toList();
        OvenLoad load = new OvenLoad(1, rows, LoadSize.NONE);
        return new CureQueue(oven, 180, 10, List.of(), List.of(load), 1).minutesOf(load);
    }

    /** By hand: 30 to hang, cool down and take off, 10 of cure, and 3 for each of 8 mm are 64. */
    @Test
    void grow_with_the_thickest_section_in_it() {
        assertThat(minutes(oven("3"), "4", "8")).isEqualTo(64);
        assertThat(minutes(oven("3"), "4", "4")).isEqualTo(52);
    }

    /**
     * In the same air a section twice as thick takes twice the time (lumped capacity, t = ρ·c·V/(α·A) · ln of temperatures,
     * Incropera, Fundamentals of Heat and Mass Transfer, chapter 5; from memory).
     */
    @Test
    void have_twice_the_heating_up_for_twice_the_section() {
        int beside = minutes(oven("0"), "5");
        assertThat(minutes(oven("2"), "10") - beside).isEqualTo(2 * (minutes(oven("2"), "5") - beside));
    }

    @Test
    void are_rounded_up_to_whole_ones() {
        assertThat(minutes(oven("2.5"), "5")).isEqualTo(53);
    }

    @Test
    void are_those_beside_the_cure_where_nobody_says_how_sections_heat_up() {
        assertThat(minutes(oven("0"), "8")).isEqualTo(40);
    }
}
