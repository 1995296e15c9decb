package boltlore.trades.bill.sheets;

import boltlore.catalogue.Drawing;
import boltlore.measure.PartNumber;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.DocumentsTable;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.Job;
import boltlore.trades.picking.OnHold;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is to make: one row for each part, to release, count, inspect and sign. */
final class MakePage {

    private final CostedBill costed;
    private final OrderHead head;
    private final MakingWords words;
    private final List<Job> jobs;
    /** How many of each part belong to brackets of which nobody has said yet whether they ship. */
    private final Map<PartNumber, BigDecimal> undecided;

    private final TableSpec<Job> spec = TableSpec.named("make");

    MakePage(CostedBill costed, OrderHead head, List<Job> jobs, List<OnHold> onHold) {
        this.costed = costed;
        this.head = head;
        this.words = new MakingWords(costed.catalogue().materials());
        this.jobs = jobs;
        this.undecided = onHold.stream()
                .collect(Collectors.toMap(held -> held.part().number(), OnHold::quantity, BigDecimal::add));
        what();
        LocalDate due = costed.bill().order().due();
        Days.add(
                spec,
                "release",
                "Release by",
                "Release",
                due,
                job -> job.timing().startBy(due),
                job -> job.timing().startDays());
        spec.box(Column.tick("firstOff", "1st off good"))
                .box(Column.tick("inspected", "Inspected"))
                .besideThePaper();
        Days.add(
                spec,
                "need",
                "Needed by",
                "Needed",
                due,
                job -> job.timing().readyBy(due),
                job -> job.timing().readyDays());
        spec.text("cuts", "Cut for each", 20, job -> words.cuts(job.part().making()));
        howMany();
    }

    private void what() {
        spec.text("part", "Part number", 12, job -> job.part().number().text())
                .text("revision", "Rev.", 4, job -> job.part().revision())
                .said("name", "Name", 52, job -> job.part().name())
                .text("drawing", "Drawing", 12, job -> drawn(job, Drawing::number))
                .text("issue", "Issue", 5, job -> drawn(job, Drawing::issue))
                .text(
                        "material",
                        "Material",
                        40,
                        job -> words.material(job.part().making()))
                .text("finish", "Finish", 34, job -> costed.catalogue().finishSays(job.finish(), head.language()))
                .quantity("count", "Make", "", Job::count);
        if (jobs.stream().anyMatch(job -> undecided.containsKey(job.part().number()))) {
            spec.quantity(
                    "undecided",
                    "Not yet decided",
                    "",
                    job -> undecided.get(job.part().number()));
        }
    }

    /** Columns that would stay empty are left out. */
    private void howMany() {
        if (jobs.stream().anyMatch(job -> job.extra().signum() > 0)) {
            spec.quantity("extra", "Of them extra", "", job -> job.extra().signum() > 0 ? job.extra() : null);
        }
        spec.decimal("minutes", "Time", "min", 1, job -> JobCardsPage.has(job) ? job.minutes() : null);
    }

    private static @Nullable String drawn(Job job, Function<Drawing, String> said) {
        Drawing drawing = job.part().making().drawing();
        return drawing == null ? null : said.apply(drawing);
    }

    PageBuilder page() {
        PageBuilder page =
                head.page(PageNames.TO_MAKE, "To make").print(head.portrait().turned(true));
        CautionNotes.add(
                page,
                JobCardsPage.cautions(jobs, costed.catalogue().workshop()),
                costed.catalogue().workshop(),
                "Caution",
                head.language());
        TableBuilder table = spec.empty();
        jobs.forEach(job -> spec.add(table, job.part().number().text(), job));
        table.total("all", "All parts").sum("minutes", Job.minutes(jobs));
        page.add(table).frozen(2);
        Set<PartNumber> made = jobs.stream().map(job -> job.part().number()).collect(Collectors.toSet());
        DocumentsTable.add(
                page,
                costed.bill().all().filter(item -> made.contains(item.part().number())));
        return page.signatures("Released by", "Inspected by");
    }
}
