package boltlore.trades.testing;

import boltlore.catalogue.KitTest;
import boltlore.catalogue.TestGroup;
import boltlore.catalogue.Workshop;
import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** One group of tests: who may do it, then a line a box, with the method over the lines of each test. */
final class GroupPage {

    private static final int KILO = 3;

    /** @param tested what and how, in a test's first line alone */
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
                .text(
                        "where",
                        words.say("where"),
                        30,
                        line -> words.place(line.row().at()))
                .text("limit", words.say("limitOrBox"), 24, Line::limit)
                .text("unit", words.say("unit"), Line::unit)
                .code("box-id", Line::box)
                .box(Column.blank("reading", words.say("reading")))
                .box(Column.blank("again", words.say("again")))
                .box(Column.blank("serial", words.say("serial")))
                .box(Column.signature("by", words.say("by")))
                .besideThePaper()
                .text(
                        "tested",
                        words.say("tested"),
                        44,
                        line -> line.row().test().says().in(words.language()));
    }

    /** What is tested, and how, over all places where it is. */
    private TableBuilder table() {
        TableSpec<Line> spec = spec();
        TableBuilder table = spec.empty();
        for (Line line : lines) {
            if (!line.tested().isEmpty()) {
                table.group(line.row().test().name(), line.tested());
            }
            spec.add(table, "", line);
        }
        return table;
    }

    /** All groups in their order, one below the other. */
    static PageBuilder compose(List<GroupPlan> groups, Workshop workshop, TestWords words) {
        PageBuilder page = Page.named(words.say("tests")).title(words.say("tests"));
        int first = 1;
        boolean drawn = false;
        Set<String> said = new HashSet<>();
        for (GroupPlan group : groups) {
            page.heading(group.group().says().in(words.language()));
            cautions(page, group.group(), said, workshop, words);
            add(page, group, first, words);
            drawn = isolation(page, group, drawn, words);
            first += group.rows().size();
        }
        return page;
    }

    private static void add(PageBuilder page, GroupPlan plan, int first, TestWords words) {
        GroupPage rows = new GroupPage(first, words);
        rows.fill(plan);
        page.add(rows.table().about("group-of-tests", plan.group().name()));
    }

    /** What only this group asks for stands with it; a caution that an earlier group has said is not read a ninth time. */
    private static void cautions(
            PageBuilder page, TestGroup group, Set<String> said, Workshop workshop, TestWords words) {
        String lead = words.say("caution");
        page.caution(lead, group.before().in(words.language()));
        List<String> others = group.cautions().stream().filter(said::add).toList();
        CautionNotes.add(page, others, workshop, lead, words.language());
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
        String tested = said
                ? ""
                : row.test().says().in(words.language()) + ". "
                        + row.test().method().in(words.language());
        if (row.workedOut()) {
            row.boxes()
                    .forEach(box -> line(
                            row,
                            box.key(),
                            box.equals(row.boxes().get(0)) ? tested : "",
                            words.quantity(box),
                            box.unit()));
            String key = row.suitedOhm() == null && row.unit().equals("%") ? "quantity.share" : "quantity.ri";
            line(row, row.key(), words.say(key), words.limitWithBasis(row), row.unit());
        } else {
            line(row, row.key(), tested, words.limitWithBasis(row), row.unit());
        }
        number++;
    }

    private void line(TestRow row, String box, String tested, String limit, String unit) {
        lines.add(new Line(number, row, box, tested, limit, TestWords.unit(unit)));
    }

    /**
     * How the isolation of this kit is measured and worked out: circuit, formula, and for each place a line with its limit.
     *
     * @param drawn whether the circuit stands on the sheet already
     */
    private static boolean isolation(PageBuilder page, GroupPlan plan, boolean drawn, TestWords words) {
        List<TestRow> worked =
                plan.rows().stream().filter(row -> row.suitedOhm() != null).toList();
        if (worked.isEmpty()) {
            return drawn;
        }
        BigDecimal suitedOhm = Objects.requireNonNull(worked.get(0).suitedOhm());
        page.heading(words.say("isolation.heading"));
        if (!drawn) {
            page.picture(IsolationCircuit.draw(words));
        }
        page.note(words.say("isolation.formula", Digits.plain(suitedOhm.movePointLeft(KILO))));
        worked.forEach(row ->
                page.note(words.say("isolation.limit", words.limit(row), words.basis(row), words.place(row.at()))));
        page.note(words.say("isolation.source"));
        return true;
    }
}
