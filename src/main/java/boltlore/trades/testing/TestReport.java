package boltlore.trades.testing;

import boltlore.catalogue.Workshop;
import boltlore.report.FindingsTable;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.Note;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.report.Signatures;
import java.util.List;

/** The test report of one kit: what did not pass first, then every reading with its verdict, retests included. */
public final class TestReport {

    public static final String FILE = "test-report";

    private final Verdict verdict;
    private final TestPlan plan;
    private final Workshop workshop;
    private final TestWords words;
    private final VerdictWords says;

    private TestReport(Verdict verdict, Workshop workshop) {
        this.verdict = verdict;
        this.plan = verdict.plan();
        this.workshop = workshop;
        this.words = TestWords.in(plan.bill().order().language());
        this.says = new VerdictWords(words);
    }

    public static Report compose(Verdict verdict, Workshop workshop) {
        return new TestReport(verdict, workshop).workbook();
    }

    private Report workbook() {
        ReportBuilder book = TestSheet.book(FILE, words.say("report.title"), plan, workshop, words);
        book.found(VerdictFindings.find(verdict))
                .glance(new Heading(TestSheet.glance(plan, workshop), Look.TITLE))
                .glance(Note.plain("", new VerdictWords(TestWords.in(workshop.language())).headline(verdict)));
        return book.page(TestSheet.print(verdictPage(), plan, words))
                .page(TestSheet.print(ReadingsPage.compose(verdict, words), plan, words))
                .build();
    }

    private PageBuilder verdictPage() {
        PageBuilder page = Page.named(words.say("report.page")).title(words.say("report.title"));
        page.add(FrontPage.particulars(plan, workshop, words));
        page.heading(says.headline(verdict)).caution(words.say("caution"), words.say("report.release"));
        FindingsTable.add(page, VerdictFindings.find(verdict), words.language());
        List<String> lines = List.of(words.say("sign.tester"), words.say("sign.second"), words.say("sign.release"));
        return page.add(new Signatures(lines, words.say("date")));
    }
}
