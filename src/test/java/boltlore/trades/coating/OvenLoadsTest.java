package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.EnvelopeMm;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The sample oven takes 10 m², 100 kg, 10 hooks and half of 2000 l. */
class OvenLoadsTest {

    private static final LoadSize LIMITS = LoadSize.limits(SampleShop.OVEN);

    private static BatchRow row(String part, CoatingSpec coat, int pieces) {
        return SampleOrders.row(SampleShop.part(part, coat), coat, pieces);
    }

    private static int loads(CoatingSpec coat, int pieces) {
        return OvenLoads.fill(List.of(row("P-1", coat, pieces)), SampleShop.OVEN)
                .size();
    }

    @Nested
    class Limits {

        @Test
        @DisplayName("Ten pieces on ten hooks are one load, eleven are two")
        void hooks() {
            assertThat(loads(SampleShop.coat("0.1"), 10)).isEqualTo(1);
            assertThat(loads(SampleShop.coat("0.1"), 11)).isEqualTo(2);
        }

        @Test
        @DisplayName("Five pieces of 2 m² fill the area to its limit, of 2.01 m² they are two loads")
        void area() {
            assertThat(loads(SampleShop.coat("2"), 5)).isEqualTo(1);
            assertThat(loads(SampleShop.coat("2.01"), 5)).isEqualTo(2);
        }

        @Test
        @DisplayName("Two pieces of 500 l fill the half of 2000 l, a little more and they are two loads")
        void volume() {
            assertThat(loads(SampleShop.coat("0.1", new EnvelopeMm(1000, 1000, 500)), 2))
                    .isEqualTo(1);
            assertThat(loads(SampleShop.coat("0.1", new EnvelopeMm(1000, 1000, 501)), 2))
                    .isEqualTo(2);
        }

        @Test
        @DisplayName("What a piece hangs on counts: 2.5 kg bare, 2.75 kg in the load")
        void mass_with_hanging() {
            assertThat(LoadSize.of(row("P-1", SampleShop.coat("0.1"), 1)).kg()).isEqualByComparingTo("2.75");
        }

        @Test
        @DisplayName("40 pieces of 2.75 kg are over 100 kg")
        void mass() {
            LoadSize one = LoadSize.of(row("P-1", SampleShop.coat("0.1"), 1));
            assertThat(one.times(36).kg()).isLessThan(LIMITS.kg());
            assertThat(one.times(40).beyond(LIMITS)).anyMatch(why -> why.startsWith("mass with hanging 110 is over"));
        }
    }

    @Nested
    class Packing {

        private static final List<BatchRow> MIXED = List.of(
                row("P-1", SampleShop.coat("6"), 2),
                row("P-2", SampleShop.coat("4"), 2),
                row("P-3", SampleShop.coat("0.1"), 5));

        @Test
        void small_pieces_go_where_they_leave_the_load_fullest() {
            assertThat(OvenLoads.fill(MIXED, SampleShop.OVEN)).hasSize(3);
        }

        @Test
        void every_piece_is_in_exactly_one_load() {
            List<String> hung = OvenLoads.fill(MIXED, SampleShop.OVEN).stream()
                    .flatMap(load -> load.rows().stream())
                    .flatMap(row -> row.marks().stream()
                            .flatMap(marks -> IntStream.rangeClosed(marks.from(), marks.to())
                                    .mapToObj(number -> row.part().number() + " " + number)))
                    .sorted()
                    .toList();
            assertThat(hung)
                    .containsExactly("P-1 1", "P-1 2", "P-2 1", "P-2 2", "P-3 1", "P-3 2", "P-3 3", "P-3 4", "P-3 5");
        }

        @Test
        void no_load_is_over_a_limit() {
            assertThat(OvenLoads.fill(MIXED, SampleShop.OVEN))
                    .allSatisfy(load -> assertThat(load.size().within(LIMITS)).isTrue());
        }

        @Test
        void the_same_pieces_give_the_same_loads() {
            assertThat(OvenLoads.fill(MIXED, SampleShop.OVEN)).isEqualTo(OvenLoads.fill(MIXED, SampleShop.OVEN));
        }

        @Test
        void as_many_loads_whatever_the_order_of_the_rows() {
            List<BatchRow> turned = new ArrayList<>(MIXED);
            Collections.reverse(turned);
            assertThat(OvenLoads.fill(turned, SampleShop.OVEN)).hasSameSizeAs(OvenLoads.fill(MIXED, SampleShop.OVEN));
        }
    }

    @Nested
    class At_least {

        private static int atLeast(String areaM2, int pieces) {
            return LeastLoads.bound(List.of(row("P-1", SampleShop.coat(areaM2), pieces)), SampleShop.OVEN);
        }

        @Test
        @DisplayName("20.1 m² in an oven for 10 m² are at least three loads")
        void by_the_sum() {
            assertThat(atLeast("6.7", 3)).isEqualTo(3);
        }

        @Test
        @DisplayName("Three pieces of 5.1 m² cannot share, although 15.3 m² would go into two loads")
        void by_halves() {
            assertThat(atLeast("5.1", 3)).isEqualTo(3);
        }

        @Test
        @DisplayName("Three pieces of 5 m² can share")
        void exactly_half_shares() {
            assertThat(atLeast("5", 3)).isEqualTo(2);
        }

        @Test
        void nothing_needs_no_load() {
            assertThat(LeastLoads.bound(List.of(), SampleShop.OVEN)).isZero();
        }
    }

    @Nested
    class Sections {

        private static OvenLoad load(BatchRow... rows) {
            return OvenLoads.fill(List.of(rows), SampleShop.OVEN).get(0);
        }

        @Test
        @DisplayName("4 mm beside 2 mm is told")
        void mixed() {
            OvenLoad load =
                    load(row("P-1", SampleShop.sections("2", "2"), 1), row("P-2", SampleShop.sections("4", "4"), 1));
            assertThat(load.mixesSections()).isTrue();
            assertThat(load.thickest().part().number().text()).isEqualTo("P-2");
        }

        @Test
        @DisplayName("3 mm beside 2 mm is not")
        void alike() {
            OvenLoad load =
                    load(row("P-1", SampleShop.sections("2", "2"), 1), row("P-2", SampleShop.sections("3", "3"), 1));
            assertThat(load.mixesSections()).isFalse();
        }

        @Test
        void one_part_of_thin_and_thick_is_told_too() {
            assertThat(load(row("P-1", SampleShop.sections("4", "10"), 1)).mixesSections())
                    .isTrue();
        }
    }

    @Test
    void a_piece_turned_round_fits() {
        CoatingSpec upright = SampleShop.coat("0.1", new EnvelopeMm(100, 100, 1900));
        assertThat(TooBig.of(row("P-1", upright, 1), SampleShop.OVEN)).isEmpty();
    }

    @Test
    void a_piece_over_a_load_limit_alone_says_which() {
        assertThat(TooBig.of(row("P-1", SampleShop.coat("10.5"), 1), SampleShop.OVEN))
                .hasValueSatisfying(
                        tooBig -> assertThat(tooBig.why()).isEqualTo("area 10.5 is over the load limit of 10 m²"));
    }

    @Test
    void a_piece_at_a_load_limit_fits() {
        assertThat(TooBig.of(row("P-1", SampleShop.coat("10"), 1), SampleShop.OVEN))
                .isEmpty();
    }
}
