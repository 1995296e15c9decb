package boltlore.trades.bill.sheets;

import static boltlore.report.Formula.cell;
import static boltlore.report.Formula.product;
import static boltlore.report.Formula.sum;

import boltlore.catalogue.Cut;
import boltlore.catalogue.Drawing;
import boltlore.catalogue.Operation;
import boltlore.measure.Digits;
import boltlore.report.Column;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.Job;
import java.math.BigDecimal;
import java.util.List;

/** How each part is made: what is cut, then operation by operation, with room to count and sign. */
final class JobCardsPage {

    private static final Column[] COLUMNS = {
        Column.text("step", "Step").atMost(34),
        Column.decimal("length", "Length", 1).in("mm"),
        Column.text("angles", "End angles").in("°").atMost(12),
        Column.quantity("pieces", "Pieces"),
        Column.decimal("setUp", "Set-up", 1).in("min"),
        Column.decimal("run", "Run, each", 1).in("min"),
        Column.decimal("minutes", "Time", 1).in("min"),
        Column.blank("accepted", "Accepted").atMost(8),
        Column.blank("scrapped", "Scrapped").atMost(8),
        Column.signature("done", "Done by")
    };

    private final OrderHead head;
    private final List<Job> jobs;
    private final MakingWords words;

    JobCardsPage(CostedBill costed, OrderHead head, List<Job> jobs) {
        this.head = head;
        this.jobs = jobs.stream().filter(JobCardsPage::has).toList();
        this.words = new MakingWords(costed.catalogue().materials());
    }

    /** Whether there is anything to say of how the part is made. */
    static boolean has(Job job) {
        return !job.part().making().operations().isEmpty()
                || !job.part().making().cuts().isEmpty();
    }

    PageBuilder page() {
        return head.page(PageNames.JOB_CARDS, "Job cards")
                .print(head.portrait())
                .add(table())
                .frozen(1);
    }

    private TableBuilder table() {
        TableBuilder table = Table.named("steps").columns(COLUMNS);
        jobs.forEach(job -> card(table, job));
        table.total("all", "All parts").sumOfSubtotals("minutes", Job.minutes(jobs));
        return table;
    }

    private void card(TableBuilder table, Job job) {
        table.group(job.part().number().text(), heading(job));
        job.part().making().cuts().forEach(cut -> cut(table, job, cut));
        job.part().making().operations().forEach(operation -> operation(table, job, operation));
        table.subtotal("Set-up and run").sum("minutes", job.minutes());
    }

    private String heading(Job job) {
        Drawing drawing = job.part().making().drawing();
        String material = words.material(job.part().making());
        String drawn = drawing == null ? "" : " · drawing " + drawing.number() + " issue " + drawing.issue();
        return job.part().number() + " rev. " + job.part().revision() + " · "
                + job.part().name() + drawn + (material.isEmpty() ? "" : " · " + material) + " · make "
                + Digits.plain(job.count());
    }

    private void cut(TableBuilder table, Job job, Cut cut) {
        table.row()
                .put("step", "cut " + words.says(cut.material()))
                .put("length", cut.lengthMm())
                .put("angles", words.angles(cut))
                .put("pieces", job.count().multiply(BigDecimal.valueOf(cut.count())));
    }

    private static void operation(TableBuilder table, Job job, Operation operation) {
        table.row()
                .put("step", operation.operation())
                .put("pieces", job.count())
                .put("setUp", operation.setUpMin())
                .put("run", operation.runMin())
                .put("minutes", sum(cell("setUp"), product(cell("run"), cell("pieces"))), job.minutes(operation));
    }
}
