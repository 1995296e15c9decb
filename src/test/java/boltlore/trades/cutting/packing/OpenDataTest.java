package boltlore.trades.cutting.packing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Open packing data with proven optima. Source: instances folder of the public repository rafaelmartinelli/BPPLib.jl (MIT
 * licence), see src/test/resources/packing/README.md.
 */
@DisplayName("On open packing data")
class OpenDataTest {

    static Stream<CheckRow> rows() {
        return CheckTable.all("cutting-list.csv").filter(row -> row.text("id").startsWith("CL-PM-"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    @DisplayName("the packing needs the proven number of bars, and is known to be the best")
    void the_best(CheckRow row) {
        Packing packing = Packer.pack(PlainTask.of(row));
        assertThat(packing.cost()).isEqualTo(row.number("expected_bars").longValueExact());
        assertThat(packing.proven()).isTrue();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    @DisplayName("the bound L2 is the published one")
    void the_bound(CheckRow row) {
        Task task = PlainTask.of(row);
        assertThat(Bounds.bars(task.kinds(), task.stocks().get(0).room()))
                .isEqualTo(row.number("expected_lower_bound_bars").longValueExact());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    @DisplayName("first-fit decreasing needs as many bars as published")
    void first_fit(CheckRow row) {
        assertThat(DecreasingFit.pack(PlainTask.of(row), 0, DecreasingFit.Rule.FIRST))
                .hasSize(row.number("expected_first_fit_decreasing_bars").intValueExact());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    @DisplayName("best-fit decreasing needs as many bars as published")
    void best_fit(CheckRow row) {
        assertThat(DecreasingFit.pack(PlainTask.of(row), 0, DecreasingFit.Rule.BEST))
                .hasSize(row.number("expected_best_fit_decreasing_bars").intValueExact());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    @DisplayName("the pieces add up to the published sum")
    void the_sum(CheckRow row) {
        assertThat(PlainTask.of(row).kinds().stream()
                        .mapToLong(kind -> kind.length() * kind.count())
                        .sum())
                .isEqualTo(row.number("expected_sum_of_pieces").longValueExact());
    }
}
