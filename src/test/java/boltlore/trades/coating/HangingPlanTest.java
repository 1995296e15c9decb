package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Oven;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The sample oven is 2000 mm long, 1000 mm wide and 1000 mm high inside; here with four rails, 250 mm apart. */
class HangingPlanTest {

    private static final Oven OVEN = SampleShop.railed(4);
    private static final EnvelopeMm INSIDE = OVEN.inside();

    private static BatchRow row(String part, EnvelopeMm size, int pieces) {
        return SampleOrders.row(
                SampleShop.part(part, SampleShop.coat("0.1", size)), SampleShop.coat("0.1", size), pieces);
    }

    private static HangingPlan plan(BatchRow... rows) {
        return HangingPlan.of(load(List.of(rows)), OVEN).orElseThrow();
    }

    private static OvenLoad load(List<BatchRow> rows) {
        return new OvenLoad(1, rows, LoadSize.of(rows.get(0)));
    }

    private static List<Integer> rails(HangingPlan plan) {
        return plan.places().stream().map(Place::rail).toList();
    }

    @Test
    @DisplayName("The longest side hangs down, the next lies along the rail")
    void hangs_down() {
        assertThat(Hung.of(new EnvelopeMm(200, 900, 40), INSIDE)).contains(new Hung(200, 40, 900));
    }

    @Test
    @DisplayName("A side that is longer than the oven is high lies along the rail")
    void lies_along() {
        assertThat(Hung.of(new EnvelopeMm(1001, 900, 40), INSIDE)).contains(new Hung(1001, 40, 900));
    }

    @Test
    @DisplayName("What is longer than the oven hangs in no way")
    void too_long() {
        assertThat(Hung.of(new EnvelopeMm(2001, 900, 40), INSIDE)).isEmpty();
    }

    @Test
    @DisplayName("Pieces fill a rail from the door with air between them, then the next rail")
    void fills_rails() {
        HangingPlan plan = plan(row("P-1", new EnvelopeMm(900, 800, 40), 3));
        assertThat(rails(plan)).containsExactly(1, 1, 2);
        assertThat(plan.places().get(1).fromMm()).isEqualTo(800 + 60);
        assertThat(plan.noRoom()).isEmpty();
    }

    @Test
    @DisplayName("A piece of 250 mm across takes one rail, of 251 mm two")
    void takes_rails() {
        assertThat(plan(row("P-1", new EnvelopeMm(900, 800, 250), 1))
                        .places()
                        .get(0)
                        .rails())
                .isEqualTo(1);
        assertThat(plan(row("P-1", new EnvelopeMm(900, 800, 251), 1))
                        .places()
                        .get(0)
                        .rails())
                .isEqualTo(2);
    }

    @Test
    @DisplayName("Where all rails are full, a piece hangs below one that covers it, if the oven is high enough")
    void hangs_below() {
        BatchRow full = row("P-1", new EnvelopeMm(1800, 600, 40), 4);
        HangingPlan fits = plan(full, row("P-2", new EnvelopeMm(340, 300, 40), 1));
        assertThat(fits.places().get(4).topMm()).isEqualTo(600 + 60);
        HangingPlan tooHigh = plan(full, row("P-2", new EnvelopeMm(341, 300, 40), 1));
        assertThat(tooHigh.places()).hasSize(4);
        assertThat(tooHigh.noRoom()).extracting(HungPiece::number).containsExactly(2);
    }

    @Test
    @DisplayName("A piece without a size is told, not drawn")
    void unsized() {
        CoatingSpec coat =
                new CoatingSpec(null, "black", BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE, List.of(), 1, null);
        BatchRow row = SampleOrders.row(SampleShop.part("P-1", coat), coat, 2);
        HangingPlan plan = plan(row);
        assertThat(plan.places()).isEmpty();
        assertThat(plan.unsized()).containsExactly(row);
    }

    @Test
    @DisplayName("Where the oven's rails are not told there is no plan")
    void no_rails() {
        assertThat(HangingPlan.of(load(List.of(row("P-1", new EnvelopeMm(9, 8, 4), 1))), SampleShop.OVEN))
                .isEmpty();
    }

    @Property(tries = 300)
    void every_piece_is_placed_once_or_told_inside_the_oven_and_no_two_touch(
            @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 10, max = 900) Integer> sides) {
        List<BatchRow> rows = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            int next = sides.get((i + 1) % sides.size());
            int third = 10 + (sides.get(i) + next) % 400;
            rows.add(row("P-" + i, new EnvelopeMm(sides.get(i), next, third), 1 + next % 4));
        }
        HangingPlan plan = HangingPlan.of(load(rows), OVEN).orElseThrow();
        int pieces = rows.stream().mapToInt(BatchRow::pieces).sum();
        assertThat(plan.places().size() + plan.noRoom().size()).isEqualTo(pieces);
        assertThat(plan.places()).allSatisfy(HangingPlanTest::isInside);
        for (int i = 0; i < plan.places().size(); i++) {
            Place place = plan.places().get(i);
            assertThat(plan.places().subList(0, i)).noneMatch(earlier -> touch(place, earlier));
        }
    }

    private static void isInside(Place place) {
        Hung size = place.piece().size();
        assertThat(place.fromMm() + size.alongMm()).isLessThanOrEqualTo(INSIDE.length());
        assertThat(place.topMm() + size.downMm()).isLessThanOrEqualTo(INSIDE.height());
        assertThat(place.rail() - 1 + place.rails()).isLessThanOrEqualTo(4);
        assertThat(size.acrossMm()).isLessThanOrEqualTo(place.rails() * INSIDE.width() / 4);
    }

    private static boolean touch(Place one, Place other) {
        return overlap(one.rail(), one.rails(), other.rail(), other.rails())
                && overlap(
                        one.fromMm(),
                        one.piece().size().alongMm(),
                        other.fromMm(),
                        other.piece().size().alongMm())
                && overlap(
                        one.topMm(),
                        one.piece().size().downMm(),
                        other.topMm(),
                        other.piece().size().downMm());
    }

    private static boolean overlap(int from, int size, int other, int otherSize) {
        return from < other + otherSize && other < from + size;
    }

    @Test
    @DisplayName("The same pieces hang in the same places")
    void same_again() {
        BatchRow one = row("P-1", new EnvelopeMm(900, 800, 40), 3);
        BatchRow other = row("P-2", new EnvelopeMm(300, 200, 40), 5);
        assertThat(plan(one, other)).isEqualTo(plan(one, other));
        assertThat(Optional.of(plan(one, other).places().size())).contains(8);
    }
}
