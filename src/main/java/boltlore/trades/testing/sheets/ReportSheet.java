package boltlore.trades.testing.sheets;

import boltlore.catalogue.Workshop;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Signatures;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.Workbook;
import boltlore.report.WorkbookBuilder;
import boltlore.trades.testing.JudgedRow;
import boltlore.trades.testing.Reading;
import boltlore.trades.testing.TestPlan;
import boltlore.trades.testing.Verdict;
import java.util.List;

/** The test report of one kit: what did not pass first, then every reading with its verdict, retests included. */
public final class ReportSheet {

    public static final String FILE = "test-report";

    private final Verdict verdict;
    private final TestPlan plan;
    private final Workshop workshop;
    private final TestWords words;
    private final VerdictWords says;

    private ReportSheet(Verdict verdict, Workshop workshop) {
        this.verdict = verdict;
        this.plan = verdict.plan();
        this.workshop = workshop;
        this.words = TestWords.in(plan.bill().order().language());
        this.says = new VerdictWords(words);
    }

    public static Workbook of(Verdict verdict, Workshop workshop) {
        return new ReportSheet(verdict, workshop).workbook();
    }

    private Workbook workbook() {
        WorkbookBuilder book = TestSheet.book(FILE, words.say("report.title"), plan, workshop, words);
        return book.page(TestSheet.print(verdictPage(), plan, words))
                .page(TestSheet.print(ReadingsPage.of(verdict, words), plan, words))
                .build();
    }

    private PageBuilder verdictPage() {
        PageBuilder page = Page.named(words.say("report.page")).title(words.say("report.title"));
        page.add(FrontPage.particulars(plan, workshop, words));
        page.heading(says.headline(verdict)).caution(words.say("caution"), words.say("report.release"));
        if (verdict.open().findAny().isPresent()) {
            page.heading(words.say("report.open")).add(open());
        }
        if (!verdict.strangers().isEmpty()) {
            page.heading(words.say("report.strangers"))
                    .note(words.say("report.strangersSays"))
                    .add(strangers());
        }
        List<String> lines = List.of(words.say("sign.tester"), words.say("sign.second"), words.say("sign.release"));
        return page.add(new Signatures(lines, words.say("date")));
    }

    private TableBuilder open() {
        TableBuilder table = Table.named("open")
                .columns(
                        Column.text("verdict", words.say("report.verdict")),
                        Column.text("tested", words.say("tested")).atMost(56),
                        Column.text("limit", words.say("limit")).atMost(30),
                        Column.text("found", words.say("report.result")),
                        Column.text("why", words.say("report.why")).atMost(56));
        verdict.open().forEach(row -> open(table, row));
        return table;
    }

    private void open(TableBuilder table, JudgedRow judged) {
        table.row()
                .put("verdict", says.verdict(judged.judgement()))
                .put("tested", says.tested(judged.row()))
                .put("limit", words.limit(judged.row()))
                .put("found", says.found(judged))
                .put("why", says.why(judged));
    }

    private TableBuilder strangers() {
        TableBuilder table = Table.named("strangers")
                .columns(
                        Column.text("box", words.say("box")).atMost(60),
                        Column.text("value", words.say("report.value")),
                        Column.text("who", words.say("report.who")),
                        Column.text("on", words.say("report.on")));
        for (Reading each : verdict.strangers()) {
            table.row()
                    .put("box", each.box())
                    .put("value", (each.value() + " " + each.unit()).strip())
                    .put("who", each.by())
                    .put("on", each.on());
        }
        return table;
    }
}
