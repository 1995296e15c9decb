package boltlore.trades.testing.sheets;

import boltlore.catalogue.Instrument;
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
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.testing.GroupPlan;
import boltlore.trades.testing.TestPlan;
import boltlore.trades.testing.TestRow;
import java.util.List;

/** The first page: whose kit it is, how to fill the sheet in, the groups in order, the instruments, signatures. */
final class FrontPage {

    private FrontPage() {}

    static PageBuilder of(TestPlan plan, Workshop workshop, TestWords words) {
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
        return Particulars.named("order")
                .say("workshop", words.say("workshop"), workshop.name() + ", " + workshop.place())
                .say("order", words.say("order"), order.name())
                .say("customer", words.say("customer"), order.customer())
                .say("vehicle", words.say("vehicle"), vehicle)
                .say("revision", words.say("revision"), plan.revision())
                .say("tests", words.say("tests"), Long.toString(plan.rows().count()));
    }

    /** Order and vehicle alone. */
    static ParticularsBuilder brief(TestPlan plan, TestWords words) {
        Order order = plan.bill().order();
        return Particulars.named("order")
                .say("order", words.say("order"), order.name() + ", " + order.customer())
                .say(
                        "vehicle",
                        words.say("vehicle"),
                        order.choices().family().says().in(words.language()));
    }

    private static TableBuilder groups(TestPlan plan, TestWords words) {
        TableBuilder table = Table.named("groups")
                .columns(
                        Column.text("group", words.say("group")),
                        Column.whole("tests", words.say("tests")),
                        Column.blank("begun", words.say("begun")),
                        Column.signature("clear", words.say("clear")));
        for (GroupPlan group : plan.groups()) {
            table.row()
                    .put("group", group.group().says().in(words.language()))
                    .put("tests", group.rows().size());
        }
        return table;
    }

    private static TableBuilder instruments(TestPlan plan, TestWords words) {
        TableBuilder table = Table.named("instruments")
                .columns(
                        Column.text("instrument", words.say("instrument")).atMost(60),
                        Column.text("range", words.say("range")),
                        Column.text("resolution", words.say("resolution")),
                        Column.blank("number", words.say("number")),
                        new Column(
                                "calibrated",
                                words.say("calibrated"),
                                Kind.blank().day()));
        plan.rows().map(TestRow::instrument).distinct().forEach(each -> fill(table, each, words));
        return table;
    }

    private static void fill(TableBuilder table, Instrument instrument, TestWords words) {
        Scale scale = instrument.scale();
        if (scale != null) {
            table.row()
                    .put("instrument", instrument.says().in(words.language()))
                    .put("range", words.range(scale))
                    .put("resolution", words.number(scale.resolution(), scale.unit()));
        }
    }
}
