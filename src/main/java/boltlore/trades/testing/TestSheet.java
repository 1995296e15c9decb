package boltlore.trades.testing;

import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.PageBuilder;
import boltlore.report.PrintSetup;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;

/** The workbooks that a finished kit is tested with, in the order's language. */
final class TestSheet {

    static final String FILE = "end-of-line-test";
    static final String PAPERS = "labels-and-manual";

    private TestSheet() {}

    static Report sheet(TestPlan plan, Workshop workshop) {
        TestWords words = TestWords.in(plan.bill().order().language());
        TestWords own = TestWords.in(workshop.language());
        ReportBuilder book = book(FILE, words.say("title"), plan, workshop, words)
                .found(TestTrade.findings(plan))
                .glance(new Heading(
                        glance(plan, workshop) + ", " + own.say("glance.revision", plan.revision()), Look.TITLE))
                .glance(FrontPage.limits(plan, own).build());
        PageBuilder page =
                FrontPage.compose(plan, workshop, words).also(GroupPage.compose(plan.groups(), workshop, words));
        book.page(upright(page, plan, words));
        return book.data(EmptyRecord.boxes(plan, words)).build();
    }

    static Report papers(TestPlan plan, Workshop workshop) {
        TestWords words = TestWords.in(plan.bill().order().language());
        ReportBuilder book = book(PAPERS, words.say("labels.title"), plan, workshop, words);
        String title = words.say("labels.title");
        PageBuilder page = LabelsPage.compose(plan, words).also(SectionsPage.compose(plan, words));
        book.page(print(page, PrintSetup.PORTRAIT, title, plan, words));
        return book.build();
    }

    static ReportBuilder book(String file, String title, TestPlan plan, Workshop workshop, TestWords words) {
        Order order = plan.bill().order();
        ReportBuilder book = Report.named(file, title)
                .about(words.say("order") + " " + order.name())
                .by(workshop.name())
                .in(words.language());
        return order.placed() == null ? book : book.dated(order.placed());
    }

    /** Order and base vehicle, for the terminal, in the workshop's language. */
    static String glance(TestPlan plan, Workshop workshop) {
        return plan.order() + ", "
                + plan.bill().order().choices().family().says().in(workshop.language());
    }

    static PageBuilder print(PageBuilder page, TestPlan plan, TestWords words) {
        return print(page, PrintSetup.LANDSCAPE, words.say("title"), plan, words);
    }

    private static PageBuilder upright(PageBuilder page, TestPlan plan, TestWords words) {
        return print(page, PrintSetup.PORTRAIT, words.say("title"), plan, words);
    }

    private static PageBuilder print(PageBuilder page, PrintSetup setup, String title, TestPlan plan, TestWords words) {
        return page.print(setup.withCount(new PrintSetup.PageCount(words.say("pageWord"), words.say("pageOf")))
                .withFooter(title + " · " + words.say("order") + " " + plan.order() + " · " + words.say("revision")
                        + " " + plan.revision()));
    }
}
