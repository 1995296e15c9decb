package boltlore.trades.testing;

import boltlore.catalogue.Instrument;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.Scale;
import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Signatures;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The first page: whose kit it is, how to fill the sheet in, the groups in order, the instruments, signatures. */
final class FrontPage {

    private FrontPage() {}

    static PageBuilder compose(TestPlan plan, Workshop workshop, TestWords words) {
        PageBuilder page = Page.named(words.say("page.order")).title(words.say("title"));
        page.add(particulars(plan, workshop, words));
        page.note(words.say("sheet.intro"))
                .note(words.say("sheet.states", words.states()))
                .caution(words.say("caution"), words.say("sheet.stop"));
        page.heading(words.say("groups")).add(groups(plan, words));
        page.heading(words.say("instruments")).add(instruments(plan, words));
        return page.add(new Signatures(
                List.of(words.say("sign.tester"), words.say("sign.second"), words.say("sign.release")),
                words.say("date")));
    }

    static ParticularsBuilder particulars(TestPlan plan, Workshop workshop, TestWords words) {
        Order order = plan.bill().order();
        String vehicle = order.choices().family().says().in(words.language());
        ParticularsBuilder says = Particulars.named("order")
                .say("workshop", words.say("workshop"), workshop.name() + ", " + workshop.place())
                .say("order", words.say("order"), order.name())
                .say("customer", words.say("customer"), order.customer())
                .say("vehicle", words.say("vehicle"), vehicle);
        chassis(says, order, words)
                .say("revision", words.say("revision"), plan.revision())
                .say("tests", words.say("tests"), Long.toString(plan.rows().count()));
        return order.notes().isEmpty() ? says : says.say("notes", words.say("notes"), order.notes());
    }

    /** Order and vehicle with its chassis number alone. */
    static ParticularsBuilder brief(TestPlan plan, TestWords words) {
        Order order = plan.bill().order();
        ParticularsBuilder says = Particulars.named("order")
                .say("order", words.say("order"), order.name() + ", " + order.customer())
                .say(
                        "vehicle",
                        words.say("vehicle"),
                        order.choices().family().says().in(words.language()));
        return chassis(says, order, words);
    }

    /** Its number, or a place to write it. */
    private static ParticularsBuilder chassis(ParticularsBuilder says, Order order, TestWords words) {
        return order.chassis().isEmpty()
                ? says.leave("chassis", words.say("chassis"))
                : says.say("chassis", words.say("chassis"), order.chassis());
    }

    private static TableBuilder groups(TestPlan plan, TestWords words) {
        return TableSpec.<GroupPlan>named("groups")
                .text("group", words.say("group"), group -> group.group().says().in(words.language()))
                .text("circuit", words.say("during"), group -> words.circuit(group.group()))
                .whole("tests", words.say("tests"), "", group -> group.rows().size())
                .box(Column.blank("begun", words.say("begun")))
                .box(Column.signature("clear", words.say("clear")))
                .of(plan.groups());
    }

    /** Those that show a number. */
    private static TableBuilder instruments(TestPlan plan, TestWords words) {
        Kind day = Kind.blank().day();
        return TableSpec.<Instrument>named("instruments")
                .text(
                        "what",
                        words.say("instrument"),
                        30,
                        each -> each.says().in(words.language())
                                + ofScale(
                                        each,
                                        scale -> ", " + words.range(scale) + ", "
                                                + words.number(scale.resolution(), scale.unit())))
                .box(Column.blank("number", words.say("number")).atMost(12))
                .box(new Column("calibrated", words.say("calibrated"), day).atMost(13))
                .besideThePaper()
                .text(
                        "instrument",
                        words.say("instrument"),
                        60,
                        each -> each.says().in(words.language()))
                .text("range", words.say("range"), each -> ofScale(each, words::range))
                .text(
                        "resolution",
                        words.say("resolution"),
                        each -> ofScale(each, scale -> words.number(scale.resolution(), scale.unit())))
                .of(plan.rows()
                        .map(TestRow::instrument)
                        .distinct()
                        .filter(each -> each.scale() != null)
                        .toList())
                .inPairs();
    }

    private static @Nullable String ofScale(Instrument instrument, Function<Scale, String> says) {
        Scale scale = instrument.scale();
        return scale == null ? null : says.apply(scale);
    }

    /** For the terminal: each test with its limit and how many places it is made at. */
    static TableBuilder limits(TestPlan plan, TestWords words) {
        TableSpec<Map.Entry<String, List<TestRow>>> spec = TableSpec.<Map.Entry<String, List<TestRow>>>named("limits")
                .text(
                        "test",
                        words.say("tested"),
                        52,
                        same -> first(same).test().says().in(words.language()))
                .text("limit", words.say("limit"), 52, Map.Entry::getKey)
                .whole(
                        "places",
                        words.say("places"),
                        "",
                        same -> same.getValue().size());
        TableBuilder table = spec.empty();
        for (GroupPlan group : plan.groups()) {
            table.group(group.group().name(), group.group().says().in(words.language()));
            Map<KitTest, Map<String, List<TestRow>>> alike = new LinkedHashMap<>();
            group.rows()
                    .forEach(row -> alike.computeIfAbsent(row.test(), test -> new LinkedHashMap<>())
                            .computeIfAbsent(words.limitWithBasis(row), limit -> new ArrayList<>())
                            .add(row));
            alike.values().forEach(limits -> limits.entrySet().forEach(same -> spec.add(table, "", same)));
        }
        return table;
    }

    private static TestRow first(Map.Entry<String, List<TestRow>> same) {
        return same.getValue().get(0);
    }
}
