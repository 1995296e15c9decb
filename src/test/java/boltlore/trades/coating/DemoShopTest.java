package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Finish;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.demo.Demo;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The shipped coating data stays within what the trade publishes as usual. */
class DemoShopTest {

    private static final String FILM = "coating-thickness-acceptance.csv";
    private static final String POWDER = "powder-coverage.csv";
    private static final CoatingShop SHOP = Demo.catalogue().workshop().coating();

    static Stream<CheckRow> interior() {
        return CheckTable.rows(FILM, "CT-25");
    }

    static Stream<CheckRow> exterior() {
        return CheckTable.rows(FILM, "CT-26");
    }

    static Stream<CheckRow> twoCoats() {
        return CheckTable.rows(FILM, "CT-27");
    }

    static Stream<CheckRow> leastMeans() {
        return CheckTable.rows(FILM, "CT-21", "CT-23");
    }

    static Stream<CheckRow> cleaning() {
        return CheckTable.rows(POWDER, "PC-16");
    }

    static Stream<CheckRow> loosening() {
        return CheckTable.rows(FILM, "CT-32");
    }

    static Stream<CheckRow> gathering() {
        return CheckTable.rows(POWDER, "PC-13");
    }

    static Stream<CheckRow> preload() {
        return CheckTable.rows(FILM, "CT-31");
    }

    private static FilmDemand demand(String name) {
        Finish finish = Objects.requireNonNull(Demo.catalogue().finishes().get(name));
        return FilmDemand.of(finish);
    }

    private static void within(FilmDemand demand, CheckRow row) {
        assertThat(demand.leastUm())
                .isGreaterThanOrEqualTo(row.number("expected_min_um").intValueExact());
        assertThat(demand.mostUm())
                .isLessThanOrEqualTo(row.number("expected_max_um").intValueExact());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("interior")
    void in_the_cabin(CheckRow row) {
        within(demand("cabin-white"), row);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("exterior")
    void outside(CheckRow row) {
        List.of("black-satin", "grey-satin", "green-gloss", "cream-gloss").forEach(name -> within(demand(name), row));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("twoCoats")
    void primer_and_top_coat(CheckRow row) {
        within(demand("floor-two-coat"), row);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("leastMeans")
    @DisplayName("One coat outside and two coats reach the least mean of the quality label")
    void least_mean(CheckRow row) {
        FilmDemand demand = demand(row.text("check").contains("two-coat") ? "floor-two-coat" : "black-satin");
        assertThat(demand.leastUm())
                .isGreaterThanOrEqualTo(row.number("expected_min_um").intValueExact());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cleaning")
    void cleaning_to_the_last_speck_takes_no_longer_than_published(CheckRow row) {
        assertThat(SHOP.changeOvers().toLighter().minutes())
                .isLessThanOrEqualTo(row.number("expected_minutes_below").intValueExact());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("gathering")
    void gathering_brings_as_much_onto_the_parts_as_published(CheckRow row) {
        assertThat(SHOP.booths().get(0).reclaimPercent())
                .isBetween(row.number("expected_min_pct"), row.number("expected_max_pct"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("preload")
    void film_under_a_preloaded_joint(CheckRow row) {
        assertThat(FilmDemand.MOST_UNDER_PRELOAD_UM)
                .isEqualTo(row.number("expected_max_um").intValueExact());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("loosening")
    @DisplayName("No finish of the demo is as thick as the film under which joints were seen to loosen")
    void film_that_loosens_joints(CheckRow row) {
        assertThat(Demo.catalogue().finishes().values())
                .filteredOn(finish -> !finish.coats().isEmpty())
                .allSatisfy(finish -> assertThat(FilmDemand.of(finish).mostUm())
                        .isLessThan(row.number("expected_max_um").intValueExact()));
    }
}
