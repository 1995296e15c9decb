package boltlore.walking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.walking.Block.Point;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A walk")
class RoutesTest {

    private static final Pattern PLACE = Pattern.compile("\\(([0-9]+),([0-9]+)\\)");
    private static final BigDecimal MM = BigDecimal.valueOf(1000);

    static Stream<CheckRow> published() {
        return CheckTable.all("pick-routes.csv").map(row -> {
            row.cells().putIfAbsent("check", "lengths of walks " + row.text("case"));
            return row;
        });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("published")
    @DisplayName("is as long by each rule as published")
    void published(CheckRow row) {
        Block block = block(row);
        assertThat(metres(block, RouteRule.S_SHAPE)).isEqualByComparingTo(row.number("expected_s_shape_m"));
        assertThat(metres(block, RouteRule.RETURN)).isEqualByComparingTo(row.number("expected_return_m"));
        assertThat(metres(block, RouteRule.LARGEST_GAP)).isEqualByComparingTo(row.number("expected_largest_gap_m"));
        assertThat(metres(block, RouteRule.SHORTEST)).isEqualByComparingTo(row.number("expected_optimum_m"));
    }

    @Test
    void goes_nowhere_where_nothing_is_to_be_fetched() {
        for (RouteRule rule : RouteRule.values()) {
            assertThat(rule.route(Block.of(20_000, 0, List.of())).lengthMm()).isZero();
        }
    }

    @Test
    void into_one_aisle_goes_no_farther_than_its_last_stop() {
        for (RouteRule rule : RouteRule.values()) {
            Route route = rule.route(Block.of(20_000, 0, List.of(new Point(3_000, 4_000), new Point(3_000, 9_000))));
            assertThat(route.lengthMm()).as(rule.name()).isEqualTo(2 * (3_000 + 9_000));
            assertThat(route.stops()).containsExactly(new Point(3_000, 4_000), new Point(3_000, 9_000));
        }
    }

    @Test
    void by_midpoint_enters_each_half_from_its_own_end() {
        Block block = Block.of(
                20_000,
                0,
                List.of(
                        new Point(0, 1_000),
                        new Point(3_000, 10_000),
                        new Point(3_000, 11_000),
                        new Point(6_000, 19_000)));
        // up, 3 along, 9 in and out from the back, 3 along, down, 3 back, 10 in and out from the front, 3 back
        assertThat(RouteRule.MIDPOINT.route(block).lengthMm())
                .isEqualTo(20_000 + 3_000 + 18_000 + 3_000 + 20_000 + 3_000 + 20_000 + 3_000);
        assertThat(RouteRule.MIDPOINT.route(block).stops())
                .containsExactly(
                        new Point(0, 1_000),
                        new Point(3_000, 11_000),
                        new Point(6_000, 19_000),
                        new Point(3_000, 10_000));
    }

    @Test
    void begins_at_the_nearer_end() {
        Block block =
                Block.of(20_000, 6_000, List.of(new Point(0, 1_000), new Point(3_000, 1_000), new Point(6_000, 1_000)));
        assertThat(RouteRule.S_SHAPE.route(block).stops().get(0)).isEqualTo(new Point(6_000, 1_000));
        assertThat(RouteRule.S_SHAPE.route(block).stops().get(2)).isEqualTo(new Point(0, 1_000));
    }

    @Test
    void to_a_stop_outside_every_aisle_is_refused() {
        assertThatThrownBy(() -> Block.of(20_000, 0, List.of(new Point(0, 20_001))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(Block.of(20_000, 0, List.of(new Point(0, 20_000))).stops()).hasSize(1);
    }

    private static BigDecimal metres(Block block, RouteRule rule) {
        return BigDecimal.valueOf(rule.route(block).lengthMm()).divide(MM);
    }

    private static Block block(CheckRow row) {
        long pitchMm = row.number("aisle_pitch_m").multiply(MM).longValueExact();
        List<Point> stops = PLACE.matcher(row.text("picks_aisle_position"))
                .results()
                .map(place -> new Point(
                        (Long.parseLong(place.group(1)) - 1) * pitchMm, Long.parseLong(place.group(2)) * 1_000))
                .toList();
        return Block.of(row.number("aisle_length_m").multiply(MM).longValueExact(), 0, stops);
    }
}
