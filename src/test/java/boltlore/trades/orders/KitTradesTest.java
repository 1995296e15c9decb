package boltlore.trades.orders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.demo.Demo;
import boltlore.findings.Findings;
import boltlore.trades.FoundBy;
import boltlore.trades.KitInWork;
import boltlore.trades.Trade;
import boltlore.trades.TradeResult;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Every trade makes its sheets of a kit that something stops:")
class KitTradesTest {

    private static final String ORDER = "bl-1001";

    private static KitInWork kit(List<Item> items) {
        Bill whole = Demo.bill(ORDER);
        return new KitInWork(
                Demo.kit(ORDER).plan(), new Bill(whole.order(), whole.resolved(), items), LocalDate.of(2026, 3, 2));
    }

    private static KitInWork kit(Predicate<Item> kept) {
        return kit(Demo.bill(ORDER).items().stream().filter(kept).toList());
    }

    private static String subSystem(Item item) {
        return String.valueOf(item.position().subSystem());
    }

    static Stream<String> subSystems() {
        return Demo.bill(ORDER).items().stream().map(KitTradesTest::subSystem).distinct();
    }

    /** All trades have their say. */
    private static KitTrades worked(KitInWork kit) {
        KitTrades all = KitTrades.of(kit, Findings.NONE);
        assertThat(all.found().stream().map(FoundBy::by))
                .containsAll(Trades.ALL.stream().map(Trade::name).toList());
        return all;
    }

    /** And all their sheets are made. */
    private static KitTrades written(KitInWork kit) {
        KitTrades all = worked(kit);
        all.results().values().stream()
                .flatMap(List::stream)
                .map(TradeResult::sheets)
                .flatMap(List::stream)
                .forEach(sheet -> {
                    assertThat(sheet.report().get().pages()).isNotEmpty();
                    assertThatCode(() -> sheet.beside().get()).doesNotThrowAnyException();
                });
        return all;
    }

    @ParameterizedTest
    @DisplayName("one without a sub-system")
    @MethodSource("subSystems")
    void lacking(String subSystem) {
        assertThat(worked(kit(item -> !subSystem(item).equals(subSystem))).results())
                .containsKey("picking");
    }

    @Test
    @DisplayName("one that is a single sub-system, and one of nothing at all")
    void nearly_nothing() {
        String first = subSystems().findFirst().orElseThrow();
        assertThat(written(kit(item -> subSystem(item).equals(first))).results())
                .containsKey("fixings");
        assertThat(written(kit(item -> false)).results()).containsKey("fixings");
    }

    @Test
    @DisplayName("one with two alternatives for many a position")
    void clashing() {
        List<Item> both = new ArrayList<>(Demo.bill(ORDER).items());
        Demo.bill("bl-1003").items().stream()
                .filter(item -> both.stream().noneMatch(each -> each.line().equals(item.line())))
                .forEach(both::add);
        assertThat(both).hasSizeGreaterThan(Demo.bill(ORDER).items().size() + 5);
        assertThat(written(kit(both)).results()).containsKey("test");
    }
}
