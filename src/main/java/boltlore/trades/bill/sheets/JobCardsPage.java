package boltlore.trades.bill.sheets;

import static boltlore.report.Formula.cell;
import static boltlore.report.Formula.product;
import static boltlore.report.Formula.sum;

import boltlore.catalogue.Cut;
import boltlore.catalogue.Drawing;
import boltlore.catalogue.Operation;
import boltlore.catalogue.Workshop;
import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Look;
import boltlore.report.Note;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.Job;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** How each part is made: what is cut, then operation by operation, with room to count and sign. */
final class JobCardsPage {

    /** A cut or an operation; minutes only of an operation. */
    private record Step(
            String says,
            @Nullable Cut cut,
            BigDecimal pieces,
            @Nullable Operation operation,
            BigDecimal minutes) {}

    private final CostedBill costed;
    private final OrderHead head;
    private final List<Job> jobs;
    private final MakingWords words;
    private final TableSpec<Step> spec = TableSpec.named("steps");

    JobCardsPage(CostedBill costed, OrderHead head, List<Job> jobs) {
        this.costed = costed;
        this.head = head;
        this.jobs = jobs.stream().filter(JobCardsPage::has).toList();
        this.words = new MakingWords(costed.catalogue().materials());
        columns();
    }

    private void columns() {
        spec.text("step", "Step", 34, Step::says)
                .decimal(
                        "length",
                        "Length",
                        "mm",
                        1,
                        step -> step.cut() == null ? null : step.cut().lengthMm())
                .column(
                        Column.text("angles", "End angles").in("°").atMost(12),
                        step -> step.cut() == null ? Cell.EMPTY : Cell.of(words.angles(step.cut())))
                .quantity("pieces", "Pieces", "", Step::pieces)
                .decimal("setUp", "Set-up", "min", 1, step -> of(step, Operation::setUpMin))
                .decimal("run", "Run, each", "min", 1, step -> of(step, Operation::runMin))
                .column(Column.decimal("minutes", "Time", 1).in("min"), JobCardsPage::minutes)
                .box(Column.blank("accepted", "Accepted").atMost(8))
                .box(Column.blank("scrapped", "Scrapped").atMost(8))
                .box(Column.signature("done", "Done by"));
    }

    private static @Nullable BigDecimal of(Step step, Function<Operation, BigDecimal> number) {
        return step.operation() == null ? null : number.apply(step.operation());
    }

    private static Cell minutes(Step step) {
        return step.operation() == null
                ? Cell.EMPTY
                : Cell.of(sum(cell("setUp"), product(cell("run"), cell("pieces"))), step.minutes());
    }

    /** Whether there is anything to say of how the part is made. */
    static boolean has(Job job) {
        return !job.part().making().operations().isEmpty()
                || !job.part().making().cuts().isEmpty();
    }

    PageBuilder page() {
        PageBuilder page = head.page(PageNames.JOB_CARDS, "Job cards").print(head.portrait());
        String notes = costed.bill().order().notes();
        if (!notes.isEmpty()) {
            page.add(new Note(Look.NOTE, "notes", "Notes on the order", notes));
        }
        CautionNotes.add(page, cautions(), costed.catalogue().workshop(), "Caution", head.language());
        return page.add(table()).frozen(1);
    }

    /** What stands on the page 'To make', and what stands on the cutting list for saws, beams and presses. */
    private Set<String> cautions() {
        Workshop workshop = costed.catalogue().workshop();
        Set<String> codes = cautions(jobs, workshop);
        boolean bars = jobs.stream().anyMatch(job -> !job.part().making().cuts().isEmpty());
        boolean blanks = jobs.stream().anyMatch(job -> job.part().making().blank() != null);
        if (bars) {
            codes.addAll(CautionNotes.alwaysOn(workshop, "cutting-bars"));
        }
        if (blanks) {
            codes.addAll(CautionNotes.alwaysOn(workshop, "cutting-blanks"));
        }
        if (bars || blanks) {
            codes.addAll(CautionNotes.alwaysOn(workshop, "cutting"));
        }
        return codes;
    }

    /** What the parts bear, and what the workshop wants said wherever one of their operations is done, as crimping. */
    static SortedSet<String> cautions(List<Job> jobs, Workshop workshop) {
        Stream<String> made = jobs.stream()
                .flatMap(job -> job.part().making().operations().stream())
                .map(operation -> "making-" + operation.operation().replace(' ', '-'))
                .distinct()
                .flatMap(sheet -> CautionNotes.alwaysOn(workshop, sheet).stream());
        return Stream.concat(jobs.stream().flatMap(job -> job.part().cautions().stream()), made)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    TableBuilder table() {
        TableBuilder table = spec.empty();
        jobs.forEach(job -> card(table, job));
        table.total("all", "All parts").sumOfSubtotals("minutes", Job.minutes(jobs));
        return table;
    }

    private void card(TableBuilder table, Job job) {
        table.group(job.part().number().text(), heading(job));
        job.part().making().cuts().forEach(cut -> spec.add(table, "", cut(job, cut)));
        job.part()
                .making()
                .operations()
                .forEach(operation -> spec.add(
                        table,
                        "",
                        new Step(operation.operation(), null, job.count(), operation, job.minutes(operation))));
        table.subtotal("Set-up and run").sum("minutes", job.minutes());
    }

    private String heading(Job job) {
        Drawing drawing = job.part().making().drawing();
        String material = words.material(job.part().making());
        String drawn = drawing == null ? "" : " · drawing " + drawing.number() + " issue " + drawing.issue();
        return job.part().number() + " rev. " + job.part().revision() + " · "
                + head.says(job.part().name()) + drawn + (material.isEmpty() ? "" : " · " + material) + " · make "
                + Digits.plain(job.count());
    }

    private Step cut(Job job, Cut cut) {
        BigDecimal pieces = job.count().multiply(BigDecimal.valueOf(cut.count()));
        String measured = cut.measured() == null ? "" : ", as measured on the vehicle";
        return new Step("cut " + words.says(cut.material()) + measured, cut, pieces, null, BigDecimal.ZERO);
    }
}
