package boltlore.trades.testing.sheets;

import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import boltlore.report.PageBuilder;
import boltlore.report.PrintSetup;
import boltlore.report.Workbook;
import boltlore.report.WorkbookBuilder;
import boltlore.trades.testing.GroupPlan;
import boltlore.trades.testing.TestPlan;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** The workbooks that a finished kit is tested with, in the order's language. */
public final class TestSheet {

    public static final String FILE = "end-of-line-test";
    public static final String PAPERS = "labels-and-manual";

    private TestSheet() {}

    /** The test sheet, then labels and manual sections where the family has some. */
    public static List<Workbook> of(TestPlan plan, Workshop workshop) {
        return each(plan, workshop).map(Supplier::get).toList();
    }

    /** The same, each to be made when it is written. */
    public static Stream<Supplier<Workbook>> each(TestPlan plan, Workshop workshop) {
        Stream<Supplier<Workbook>> sheet = Stream.of(() -> sheet(plan, workshop));
        boolean papers = !plan.labels().isEmpty() || !plan.sections().isEmpty();
        return papers ? Stream.concat(sheet, Stream.of(() -> papers(plan, workshop))) : sheet;
    }

    private static Workbook sheet(TestPlan plan, Workshop workshop) {
        TestWords words = TestWords.in(plan.bill().order().language());
        WorkbookBuilder book = book(FILE, words.say("title"), plan, workshop, words);
        book.page(upright(FrontPage.of(plan, workshop, words), plan, words));
        int first = 1;
        for (GroupPlan group : plan.groups()) {
            book.page(print(GroupPage.of(group, first, workshop, words), plan, words));
            first += group.rows().size();
        }
        return book.build();
    }

    private static Workbook papers(TestPlan plan, Workshop workshop) {
        TestWords words = TestWords.in(plan.bill().order().language());
        WorkbookBuilder book = book(PAPERS, words.say("labels.title"), plan, workshop, words);
        book.page(print(LabelsPage.of(plan, words), plan, words));
        book.page(upright(SectionsPage.of(plan, words), plan, words));
        return book.build();
    }

    static WorkbookBuilder book(String file, String title, TestPlan plan, Workshop workshop, TestWords words) {
        Order order = plan.bill().order();
        WorkbookBuilder book = Workbook.of(file, title)
                .about(words.say("order") + " " + order.name())
                .by(workshop.name());
        return order.placed() == null ? book : book.dated(order.placed());
    }

    static PageBuilder print(PageBuilder page, TestPlan plan, TestWords words) {
        return print(page, PrintSetup.LANDSCAPE, plan, words);
    }

    private static PageBuilder upright(PageBuilder page, TestPlan plan, TestWords words) {
        return print(page, PrintSetup.PORTRAIT, plan, words);
    }

    private static PageBuilder print(PageBuilder page, PrintSetup setup, TestPlan plan, TestWords words) {
        return page.print(setup.withCount(new PrintSetup.PageCount(words.say("pageWord"), words.say("pageOf")))
                .withFooter(words.say("title") + " · " + words.say("order") + " " + plan.order() + " · "
                        + words.say("revision") + " " + plan.revision()));
    }
}
