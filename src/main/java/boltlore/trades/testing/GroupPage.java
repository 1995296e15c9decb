package boltlore.trades.testing;

import boltlore.catalogue.KitTest;
import boltlore.catalogue.TestGroup;
import boltlore.catalogue.Workshop;
import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** One group of tests: who may do it, then a line a box, with the method over the lines of each test. */
final class GroupPage {

    private static final int KILO = 3;

    private record Line(int number, TestRow row, String box, String tested, String limit, String unit) {}

    private final TestWords words;
    private final List<Line> lines = new ArrayList<>();
    private int number;

    private GroupPage(int first, TestWords words) {
        this.words = words;
        this.number = first;
    }

    private TableSpec<Line> spec() {
        return TableSpec.<Line>named("tests")
                .whole("no", words.say("no"), "", Line::number)
                .text("tested", words.say("tested"), 44, Line::tested)
                .text(
                        "where",
                        words.say("where"),
                        20,
                        line -> words.place(line.row().at()))
                .text("limit", words.say("limitOrBox"), 18, Line::limit)
                .text("unit", words.say("unit"), Line::unit)
                .code("box-id", Line::box)
                .box(Column.blank("reading", words.say("reading")))
                .box(Column.blank("again", words.say("again")))
                .box(Column.blank("serial", words.say("serial")))
                .box(Column.signature("by", words.say("by")));
    }

    /** All groups in their order, one below the other. */
    static PageBuilder compose(List<GroupPlan> groups, Workshop workshop, TestWords words) {
        PageBuilder page = Page.named(words.say("tests")).title(words.say("title"));
        int first = 1;
        for (GroupPlan group : groups) {
            add(page, group, first, workshop, words);
            first += group.rows().size();
        }
        return page;
    }

    private static void add(PageBuilder page, GroupPlan plan, int first, Workshop workshop, TestWords words) {
        TestGroup group = plan.group();
        page.heading(group.says().in(words.language()));
        cautions(page, group, workshop, words);
        GroupPage rows = new GroupPage(first, words);
        rows.fill(plan);
        page.add(rows.spec().of(rows.lines).about("group", group.name()));
        plan.rows().stream()
                .map(TestRow::suitedOhm)
                .filter(Objects::nonNull)
                .findFirst()
                .ifPresent(suited -> isolation(page, plan, suited, words));
    }

    private static void cautions(PageBuilder page, TestGroup group, Workshop workshop, TestWords words) {
        String lead = words.say("caution");
        page.caution(lead, group.before().in(words.language()));
        CautionNotes.add(page, group.cautions(), workshop, lead, words.language());
    }

    private void fill(GroupPlan plan) {
        KitTest last = null;
        for (TestRow row : plan.rows()) {
            lines(row, row.test().equals(last));
            last = row.test();
        }
    }

    /** The method is said once, with the first line of its test. */
    private void lines(TestRow row, boolean said) {
        String tested = row.test().says().in(words.language());
        String method = said ? "" : ". " + row.test().method().in(words.language());
        if (row.workedOut()) {
            row.boxes()
                    .forEach(box -> line(
                            row,
                            box.key(),
                            box.equals(row.boxes().get(0)) ? tested + method : "",
                            words.quantity(box),
                            box.unit()));
            String key = row.suitedOhm() == null && row.unit().equals("%") ? "quantity.share" : "quantity.ri";
            line(row, row.key(), words.say(key), words.limitWithBasis(row), row.unit());
        } else {
            line(row, row.key(), tested + method, words.limitWithBasis(row), row.unit());
        }
        number++;
    }

    private void line(TestRow row, String box, String tested, String limit, String unit) {
        lines.add(new Line(number, row, box, tested, limit, TestWords.unit(unit)));
    }

    /** How the isolation of this kit is measured and worked out: circuit, formula, limit. */
    private static void isolation(PageBuilder page, GroupPlan plan, BigDecimal suitedOhm, TestWords words) {
        page.heading(words.say("isolation.heading"));
        page.picture(IsolationCircuit.draw(words));
        page.note(words.say("isolation.formula", Digits.plain(suitedOhm.movePointLeft(KILO))));
        plan.rows().stream()
                .filter(row -> row.suitedOhm() != null)
                .findFirst()
                .ifPresent(row -> page.note(words.say("isolation.limit", words.limit(row), words.basis(row))));
        page.note(words.say("isolation.source"));
    }
}
