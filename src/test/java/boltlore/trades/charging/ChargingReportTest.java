package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Electrics;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.demo.Demo;
import boltlore.report.Approved;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.drawing.Svg;
import boltlore.report.text.TextWriter;
import boltlore.trades.KitInWork;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ChargingReportTest {

    private static final int WIDE = 200;

    private static Report demo(String order) {
        KitInWork kit = Demo.kit(order);
        return ChargingTrade.report(ChargingTrade.atHome(kit), kit);
    }

    @Test
    void a_demo_order_reads_as_a_person_has_approved_it() {
        Approved.check("trades/charging/bl-1001", new TextWriter(WIDE).text(demo("bl-1001")));
    }

    @Test
    void cautions_stand_where_people_work_on_high_voltage() {
        assertThat(new TextWriter(WIDE).text(demo("bl-2001")).replaceAll("[\\s|]+", " "))
                .contains("High voltage kills. Work on it only by people who are trained and qualified for it")
                .contains("an electrician qualified and authorised by local law")
                .contains("Never bridge one.")
                .contains("are never swapped");
    }

    static Stream<CheckRow> markings() {
        return CheckTable.rows("isolation-and-bonding.csv", "IB-15", "IB-16");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("markings")
    void cautions_say_what_marks_and_covers_live_parts(CheckRow row) {
        String sheet = new TextWriter(WIDE).text(demo("bl-2001")).replaceAll("[\\s|]+", " ");

        assertThat(row.text("expected_decision"))
                .containsAnyOf("orange outer covering", "IPXXD in cabin and luggage space");
        assertThat(sheet)
                .contains(
                        row.text("id").equals("IB-15")
                                ? "High-voltage cables outside enclosures have an orange cover"
                                : "IPXXD in cabin and luggage space, IPXXB elsewhere");
    }

    @Test
    void the_chain_is_drawn_and_says_in_words_what_limits_it() {
        assertThat(ChainDrawing.draw(ChargingTrade.atHome(Demo.kit("bl-1002"))).map(Svg::encode))
                .hasValueSatisfying(svg -> assertThat(svg)
                        .contains(
                                "<title>The chain of supply, cable, inlet, charger and pack: 7.4 kW, 2.2 h from 20 to 80 %")
                        .contains("Supply, cable, inlet and charger limit the current to 32 A."));
    }

    @Test
    void without_facts_there_are_two_pages_that_say_what_is_missing() {
        KitInWork kit = Demo.kit("bl-1001");
        Report sheet = ChargingTrade.report(ChargingCalculation.calculate(Electrics.NONE, kit.bill(), null, null), kit);

        assertThat(sheet.pages()).extracting(Page::name).containsExactly("Charging", "High voltage");
        assertThat(new TextWriter(WIDE).text(sheet)).contains("says no battery pack for this order");
    }
}
