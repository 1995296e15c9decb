package boltlore.trades.spares;

import static boltlore.sketch.PartSketch.bought;
import static boltlore.sketch.PartSketch.made;
import static boltlore.sketch.PositionSketch.at;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Joined;
import boltlore.demo.Demo;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.report.Approved;
import boltlore.report.text.TextWriter;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.sketch.PartSketch;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Service spares")
class SparesTest {

    private static final SparesTrade TRADE = new SparesTrade();

    /** What was typed: '--months 60 --km 1000'. */
    private static Outcome<Given> typed(String words) {
        Map<TradeOption<?>, List<String>> typed = new HashMap<>();
        List<String> all = words.isEmpty() ? List.of() : List.of(words.split(" "));
        for (int i = 0; i + 1 < all.size(); i += 2) {
            String name = all.get(i);
            TradeOption<?> option = TRADE.options().stream()
                    .filter(known -> known.name().equals(name))
                    .findFirst()
                    .orElseThrow();
            typed.put(option, List.of(all.get(i + 1)));
        }
        return Given.read(typed);
    }

    private static TradeResult listed(KitInWork kit, String words) {
        Outcome<List<TradeResult>> outcome = typed(words).then(given -> TRADE.work(List.of(kit), given));
        assertThat(outcome.faults()).isEmpty();
        return ((Outcome.Sound<List<TradeResult>>) outcome).value().get(0);
    }

    /** A van whose only position holds two of the first part. */
    private static KitInWork kit(PartSketch held, PartSketch... others) {
        CatalogueSketch catalogue = new CatalogueSketch().part(held);
        List.of(others).forEach(catalogue::part);
        OrderSketch order = new OrderSketch(catalogue
                .position(at("pump").line("pump", held.draw().number().text(), "2"))
                .draw());
        return new KitInWork(order.plan(), order.bill(), LocalDate.of(2026, 3, 2));
    }

    private static String text(TradeResult result) {
        return new TextWriter(220).text(result.sheets().get(0).report().get());
    }

    private static List<Finding> found(PartSketch held, PartSketch... others) {
        return listed(kit(held, others), "").findings().all();
    }

    private static PartSketch wears(@Nullable Integer months, @Nullable Integer km) {
        return bought("PU-1").replaced(months, km);
    }

    @Test
    void a_demo_order_reads_as_a_person_has_approved_it() {
        Approved.check("trades/spares/bl-1001", text(listed(Demo.kit("bl-1001"), "--months 60 --km 100000")));
    }

    @Test
    void only_parts_with_an_interval_are_listed_with_their_quantity_in_the_whole_kit() {
        PartSketch pump = made("PU-1").contains("VA-1", "3").contains("CA-1", "1");
        assertThat(text(listed(kit(pump, bought("VA-1").replaced(24, null), bought("CA-1")), "")))
                .containsPattern("VA-1 +Part VA-1 +24 +6 +each")
                .doesNotContain("CA-1")
                .doesNotContain("Changes");
    }

    @ParameterizedTest(name = "every {0} months or {1} km, for {2}: {3}")
    @DisplayName("Within a span a part is changed once for each whole interval, by months or km, whichever come first")
    @CsvSource({
        "24,     , --months 24,             1",
        "24,     , --months 23,             0",
        "24, 1000, --months 24 --km 4999,   4",
        "24, 1000, --months 120 --km 4999,  5",
        "  , 1000, --km 999,                0",
        "  , 1000, --months 600,            0"
    })
    void changes(@Nullable Integer months, @Nullable Integer km, String span, int changes) {
        assertThat(text(listed(kit(wears(months, km)), span)))
                .containsPattern("each +" + changes + " +" + 2 * changes + " ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--months 0", "--months 601", "--km -1", "--km 1.5", "--km x"})
    void a_span_that_is_none_is_refused(String words) {
        assertThat(typed(words).faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.expected()).startsWith("a whole number from 1 to "));
    }

    @Test
    void a_bought_part_that_comes_from_nowhere_is_found() {
        assertThat(found(wears(24, null).buying(null)))
                .extracting(Finding::kind)
                .containsExactly(SparesFinding.SPARE_FROM_NOWHERE);
        assertThat(found(wears(24, null).buying(null).bin("A-01-01-A-01"))).isEmpty();
        assertThat(found(wears(24, null))).isEmpty();
        assertThat(found(made("PU-1").replaced(24, null))).isEmpty();
    }

    @Test
    void a_part_that_comes_later_than_it_is_due_again_is_found() {
        assertThat(found(wears(1, null).leadDays(29)))
                .extracting(Finding::says)
                .containsExactly("PU-1 (Part PU-1) takes 29 days to come and is due every month: keep one in stock, or"
                        + " find it elsewhere.");
        assertThat(found(wears(1, null).leadDays(28))).isEmpty();
        assertThat(found(wears(null, 1).leadDays(365))).isEmpty();
    }

    @Test
    void a_part_that_is_welded_in_is_found_and_one_that_is_bolted_in_is_not() {
        PartSketch bush = bought("BU-1").replaced(72, null);
        assertThat(found(made("PU-1").contains("BU-1", "1").joined(Joined.WELDED), bush))
                .extracting(Finding::says)
                .containsExactly(
                        "BU-1 (Part BU-1) is replaced in service, but is welded into PU-1: give the interval to the"
                                + " assembly, or bolt the part.");
        assertThat(found(made("PU-1").contains("BU-1", "1").joined(Joined.BOLTED), bush))
                .isEmpty();
    }

    @Test
    void a_kit_of_which_no_part_has_an_interval_is_said_not_to_be_judged_and_gets_no_sheet() {
        TradeResult result = listed(kit(bought("PU-1")), "");
        assertThat(result.findings().all()).extracting(Finding::kind).containsExactly(KitFinding.NOT_JUDGED);
        assertThat(result.sheets()).isEmpty();
    }

    @Test
    void cautions_stand_on_the_sheet() {
        assertThat(text(listed(Demo.kit("bl-2001"), "")).replaceAll("[\\s|]+", " "))
                .contains("belongs to people qualified for it and authorised by local law")
                .contains("workshop's own value, check before use");
    }

    @Test
    void old_numbers_of_a_part_in_the_kit_are_listed_with_the_one_that_is_current() {
        KitInWork kit = kit(
                wears(24, null),
                bought("PU-0").supersededBy("PU-1", true),
                bought("PU-00").supersededBy("PU-0", false),
                bought("LA-1"),
                bought("LA-0").supersededBy("LA-1", true));

        assertThat(text(listed(kit, "")))
                .containsPattern("PU-0 +Part PU-0 +PU-1 +PU-1 +Part PU-1 +yes")
                .containsPattern("PU-00 +Part PU-00 +PU-0 +PU-1 +Part PU-1 +no")
                .doesNotContain("LA-0");
    }

    @Test
    void nothing_is_said_of_old_numbers_where_there_are_none() {
        assertThat(text(listed(kit(wears(24, null)), ""))).doesNotContain("Superseded");
    }
}
