package boltlore.trades.bill.sheets;

import static boltlore.report.Formula.cell;

import boltlore.catalogue.Drawing;
import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.Job;
import boltlore.trades.picking.OnHold;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is to make: one row for each part, to release, count, inspect and sign. */
final class MakePage {

    private final CostedBill costed;
    private final OrderHead head;
    private final @Nullable LocalDate due;
    private final MakingWords words;
    private final List<Job> jobs;
    private final Map<PartNumber, BigDecimal> undecided;

    MakePage(CostedBill costed, OrderHead head, List<Job> jobs, List<OnHold> onHold) {
        this.costed = costed;
        this.head = head;
        this.due = costed.bill().order().due();
        this.words = new MakingWords(costed.catalogue().materials());
        this.jobs = jobs;
        this.undecided = undecided(onHold);
    }

    /** How many of each part belong to brackets of which nobody has said yet whether they ship. */
    private static Map<PartNumber, BigDecimal> undecided(List<OnHold> onHold) {
        return onHold.stream()
                .collect(Collectors.toMap(held -> held.part().number(), OnHold::quantity, BigDecimal::add));
    }

    PageBuilder page() {
        PageBuilder page = head.page(PageNames.TO_MAKE, "To make");
        SortedSet<String> cautions = jobs.stream()
                .flatMap(job -> job.part().cautions().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        CautionNotes.add(page, cautions, costed.catalogue().workshop(), "Caution", "en");
        return page.add(table()).frozen(2).signatures("Released by", "Inspected by");
    }

    private TableBuilder table() {
        TableBuilder table = Table.named("make");
        MakeColumns.all(due).filter(this::isNeeded).forEach(table::columns);
        jobs.forEach(job -> fill(table.row(job.part().number().text()), job));
        table.total("all", "All parts").sum("minutes", Job.minutes(jobs));
        return table;
    }

    /** Columns that would stay empty are left out. */
    private boolean isNeeded(Column column) {
        return switch (column.key()) {
            case "extra" -> jobs.stream().anyMatch(job -> job.extra().signum() > 0);
            case "undecided" -> jobs.stream().anyMatch(this::isUndecided);
            default -> true;
        };
    }

    private boolean isUndecided(Job job) {
        return undecided.containsKey(job.part().number());
    }

    private void fill(RowBuilder row, Job job) {
        what(row, job);
        howMany(row, job);
        if (JobCardsPage.has(job)) {
            String sum = "subtotal-" + job.part().number();
            row.put("minutes", cell(PageNames.JOB_CARDS, "steps", sum, "minutes"), job.minutes());
        }
        Days.startBy(row, "release", job.timing(), due);
        Days.readyBy(row, "need", job.timing(), due);
    }

    private void howMany(RowBuilder row, Job job) {
        row.put("count", job.count());
        if (job.extra().signum() > 0) {
            row.put("extra", job.extra());
        }
        if (isUndecided(job)) {
            row.put("undecided", undecided.getOrDefault(job.part().number(), BigDecimal.ZERO));
        }
    }

    private void what(RowBuilder row, Job job) {
        row.put("part", job.part().number().text())
                .put("revision", job.part().revision())
                .put("name", job.part().name().english())
                .put("material", words.material(job.part().making()))
                .put("cuts", words.cuts(job.part().making()))
                .put("finish", costed.catalogue().finishSays(job.finish(), Wording.ENGLISH));
        Drawing drawing = job.part().making().drawing();
        if (drawing != null) {
            row.put("drawing", drawing.number()).put("issue", drawing.issue());
        }
    }
}
