package boltlore.netting;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.measure.PartNumber;
import boltlore.netting.Netting.Demand;
import boltlore.netting.PlanningData.Component;
import boltlore.netting.PlanningData.ScheduledReceipt;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("By published tables")
class NettingCheckValuesTest {

    static Stream<CheckRow> records() {
        return CheckTable.all("netting-records.csv");
    }

    static Stream<CheckRow> trees() {
        return CheckTable.all("netting-trees.csv");
    }

    static Stream<CheckRow> periods() {
        return CheckTable.all("netting.csv").filter(row -> row.text("check").equals("netting by period"));
    }

    static Stream<CheckRow> exploded() {
        return CheckTable.all("netting.csv").filter(row -> row.text("check").equals("explosion with lead times"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("records")
    @DisplayName("a record has these net requirements, receipts, stocks and releases")
    void records(CheckRow row) {
        ItemPlan plan = record(row);
        assertThat(along(row, plan::netIn)).isEqualTo(row.text("expected_net"));
        assertThat(along(row, plan::receivedIn)).isEqualTo(row.text("expected_receipts"));
        assertThat(along(row, plan::onHandAfter)).isEqualTo(row.text("expected_on_hand"));
        assertThat(along(row, plan::releasedIn)).isEqualTo(row.text("expected_releases"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("trees")
    @DisplayName("an item of a tree stands at this level and is released so")
    void trees(CheckRow row) {
        List<CheckRow> tree = trees().filter(each -> each.text("tree").equals(row.text("tree")))
                .toList();
        ItemPlan plan = netted(tree, 1).of(item(row.text("item"))).orElseThrow();
        assertThat(plan.level()).isEqualTo(row.number("expected_level").intValueExact());
        assertThat(plan.planned().stream()
                        .map(receipt -> receipt.quantity().toPlainString() + " in " + receipt.release()))
                .containsExactly(row.text("expected_releases").split("; ", -1));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("periods")
    @DisplayName("a period has this net requirement")
    void periods(CheckRow row) {
        List<CheckRow> rows = periods()
                .filter(each -> each.text("case").equals(row.text("case")))
                .toList();
        List<Demand> demands = new ArrayList<>();
        List<ScheduledReceipt> scheduled = new ArrayList<>();
        rows.forEach(each -> {
            int period = each.number("period").intValueExact();
            demands.add(new Demand(item("X"), period, each.number("gross_requirement"), "plan"));
            scheduled.add(new ScheduledReceipt("on its way", period, each.number("scheduled_receipt")));
        });
        int lead = row.numberOr("lead_time_periods", BigDecimal.ZERO).intValueExact();
        PlanningData data = new PlanningData(
                rows.get(0).number("on_hand_at_start"),
                row.number("safety_stock"),
                lead,
                LotRule.AS_NEEDED,
                BigDecimal.ZERO,
                List.of(),
                scheduled);
        ItemPlan plan =
                Netting.of(demands, Map.of(item("X"), data), 1).of(item("X")).orElseThrow();

        int period = row.number("period").intValueExact();
        assertThat(plan.netIn(period)).isEqualByComparingTo(row.number("expected_net_requirement"));
        assertThat(plan.receivedIn(period)).isEqualByComparingTo(row.number("expected_planned_receipt"));
        assertThat(plan.onHandAfter(period)).isEqualByComparingTo(row.number("expected_projected_on_hand"));
        if (row.has("expected_planned_release")) {
            assertThat(plan.releasedIn(period)).isEqualByComparingTo(row.number("expected_planned_release"));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("exploded")
    @DisplayName("an item of the tree is released so early and so many")
    void exploded(CheckRow row) {
        Map<StockItem, PlanningData> data = new HashMap<>();
        List<CheckRow> rows = exploded().toList();
        rows.forEach(each -> data.put(
                item(each.text("item")),
                data(
                        each.number("lead_time_periods").intValueExact(),
                        rows.stream()
                                .filter(child -> child.text("parents").equals(each.text("item")))
                                .map(child ->
                                        new Component(item(child.text("item")), child.number("quantity_per_parent")))
                                .toList())));
        Netting netting = Netting.of(List.of(new Demand(item("Z"), 10, BigDecimal.valueOf(59), "order")), data, 1);

        PlannedReceipt only =
                netting.of(item(row.text("item"))).orElseThrow().planned().get(0);
        assertThat(only.quantity()).isEqualByComparingTo(row.number("expected_quantity"));
        assertThat(only.due()).isEqualTo(row.number("due_period").intValueExact());
        assertThat(only.release())
                .isEqualTo(row.number("expected_release_period").intValueExact());
        assertThat(netting.askedBy(only).outside()).containsOnlyKeys("order");
    }

    static Stream<CheckRow> late() {
        return CheckTable.rows("netting.csv", "NT-past-due");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("late")
    @DisplayName("a release before the current period is past due and told")
    void late(CheckRow row) {
        PlanningData data = data(row.number("lead_time_periods").intValueExact(), List.of());
        int due = row.number("due_period").intValueExact();
        PlannedReceipt only = Netting.of(
                        List.of(new Demand(item("X"), due, BigDecimal.ONE, "order")), Map.of(item("X"), data), 1)
                .planned()
                .get(0);
        assertThat(only.release())
                .isEqualTo(row.number("expected_release_period").intValueExact());
        assertThat(only.lateBy(1)).isEqualTo(2);
        assertThat(only.lateBy(-1)).isZero();
    }

    private static ItemPlan record(CheckRow row) {
        String[] gross = row.text("gross").split(" ", -1);
        String[] scheduled = row.text("scheduled").split(" ", -1);
        List<Demand> demands = new ArrayList<>();
        List<ScheduledReceipt> coming = new ArrayList<>();
        for (int i = 0; i < gross.length; i++) {
            demands.add(new Demand(item("X"), i + 1, new BigDecimal(gross[i]), "plan"));
            coming.add(new ScheduledReceipt("on its way", i + 1, new BigDecimal(scheduled[i])));
        }
        PlanningData data = new PlanningData(
                row.number("on_hand"),
                row.number("safety_stock"),
                row.number("lead_time").intValueExact(),
                new LotRule(
                        row.number("least"),
                        row.number("multiple"),
                        row.number("cover_periods").intValueExact()),
                BigDecimal.ZERO,
                List.of(),
                coming);
        return Netting.of(demands, Map.of(item("X"), data), 1).of(item("X")).orElseThrow();
    }

    private static String along(CheckRow row, IntFunction<BigDecimal> value) {
        return String.join(
                " ",
                IntStream.rangeClosed(1, row.text("gross").split(" ", -1).length)
                        .mapToObj(value)
                        .map(BigDecimal::toPlainString)
                        .toList());
    }

    private static Netting netted(List<CheckRow> tree, int now) {
        Map<StockItem, PlanningData> data = new HashMap<>();
        List<Demand> demands = new ArrayList<>();
        for (CheckRow row : tree) {
            StockItem item = item(row.text("item"));
            data.put(
                    item,
                    new PlanningData(
                            row.number("on_hand"),
                            BigDecimal.ZERO,
                            row.number("lead_time").intValueExact(),
                            new LotRule(BigDecimal.ZERO, row.number("multiple"), 1),
                            BigDecimal.ZERO,
                            list(row, "contains", " ")
                                    .map(each -> new Component(item(each[1]), new BigDecimal(each[0])))
                                    .toList(),
                            list(row, "scheduled", " in ")
                                    .map(each -> new ScheduledReceipt(
                                            "on its way", Integer.parseInt(each[1]), new BigDecimal(each[0])))
                                    .toList()));
            list(row, "required", " in ")
                    .forEach(each ->
                            demands.add(new Demand(item, Integer.parseInt(each[1]), new BigDecimal(each[0]), "plan")));
        }
        return Netting.of(demands, data, now);
    }

    private static Stream<String[]> list(CheckRow row, String column, String between) {
        return row.has(column)
                ? Stream.of(row.text(column).split("; ", -1)).map(each -> each.split(between, -1))
                : Stream.of();
    }

    private static PlanningData data(int lead, List<Component> contains) {
        return new PlanningData(
                BigDecimal.ZERO, BigDecimal.ZERO, lead, LotRule.AS_NEEDED, BigDecimal.ZERO, contains, List.of());
    }

    private static StockItem item(String name) {
        return StockItem.bare(new PartNumber(name));
    }
}
