package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Finish;
import boltlore.catalogue.PowderCoat;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PowderRunsTest {

    private static final PowderCoat GREY = SampleShop.coats("PB-GREY", "1.5", 80);

    static Stream<CheckRow> changeOvers() {
        return CheckTable.rows("powder-coverage.csv", "PC-18", "PC-19", "PC-20", "PC-21");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("changeOvers")
    @DisplayName("Change-overs: runs − 1, and 1 more where the first powder is not in the booth")
    void change_overs(CheckRow row) {
        int colours = row.number("distinct_colour_runs").intValueExact();
        PowderCoat[] one = new PowderCoat[1];
        List<Finish> finishes = new ArrayList<>();
        for (int colour = 1; colour <= colours; colour++) {
            one[0] = SampleShop.coats("P-" + colour, "1.5", 80);
            finishes.add(SampleShop.own("finish-" + colour, one));
        }
        String inBooth = row.text("first_run_already_in_booth").equals("yes") ? "P-1" : "P-0";
        assertThat(plan(inBooth, finishes.toArray(Finish[]::new)).changeOvers())
                .isEqualTo(row.number("expected_changeovers").longValueExact());
    }

    @Test
    void the_powder_in_the_booth_is_sprayed_first() {
        List<PowderRun> runs = runs("PB-GREY", SampleShop.OWN_BLACK, SampleShop.own("grey", GREY));
        assertThat(runs).extracting(PowderRun::powder).containsExactly("PB-GREY", "PB-BLACK");
    }

    @Test
    void with_an_empty_booth_the_batches_keep_their_order() {
        List<PowderRun> runs = runs("", SampleShop.OWN_BLACK, SampleShop.own("grey", GREY));
        assertThat(runs).extracting(PowderRun::powder).containsExactly("PB-BLACK", "PB-GREY");
    }

    @Test
    void two_finishes_of_one_powder_are_one_run() {
        List<PowderRun> runs = runs("", SampleShop.OWN_BLACK, SampleShop.own("other-black", SampleShop.BLACK));
        assertThat(runs).hasSize(1);
        assertThat(runs.get(0).passes()).hasSize(2);
    }

    @Test
    void a_powder_that_a_topcoat_waits_for_comes_after_its_primer() {
        List<PowderRun> runs = runs("", SampleShop.OWN_BLACK, SampleShop.OWN_TWO_COAT);
        assertThat(runs).extracting(PowderRun::powder).containsExactly("PB-PRIMER", "PB-BLACK");
    }

    @Test
    void a_topcoat_never_comes_before_its_primer_even_where_its_powder_is_in_the_booth() {
        List<PowderRun> runs = runs("PB-BLACK", SampleShop.OWN_TWO_COAT);
        assertThat(runs).extracting(PowderRun::powder).containsExactly("PB-PRIMER", "PB-BLACK");
    }

    @Test
    void nothing_to_spray_is_no_run() {
        assertThat(runs("PB-BLACK")).isEmpty();
    }

    private static List<PowderRun> runs(String inBooth, Finish... finishes) {
        return plan(inBooth, finishes).runs();
    }

    private static CoatPlan plan(String inBooth, Finish... finishes) {
        SampleOrders order = SampleOrders.order("BL-1");
        for (Finish finish : finishes) {
            order.with(
                    1, SampleShop.part("P-" + finish.name().toUpperCase(Locale.ROOT), SampleShop.coat("0.2")), finish);
        }
        return CoatPlanner.plan(List.of(order.bill()), SampleOrders.catalogue(inBooth, finishes));
    }
}
