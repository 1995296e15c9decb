package boltlore.sheets.bill;

import static boltlore.sheets.Formula.cell;

import boltlore.catalogue.Drawing;
import boltlore.catalogue.Material;
import boltlore.pricing.Job;
import boltlore.pricing.PricedBill;
import boltlore.sheets.Column;
import boltlore.sheets.PageBuilder;
import boltlore.sheets.RowBuilder;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is to make: one row for each part, to release, count, inspect and sign. */
final class MakePage {

    private final PricedBill priced;
    private final OrderHead head;
    private final @Nullable LocalDate due;

    MakePage(PricedBill priced, OrderHead head) {
        this.priced = priced;
        this.head = head;
        this.due = priced.bill().order().due();
    }

    PageBuilder page() {
        PageBuilder page = head.page(PageNames.TO_MAKE, "To make");
        List<Job> jobs = Job.of(priced);
        CautionNotes.add(
                page,
                jobs.stream()
                        .flatMap(job -> job.part().cautions().stream())
                        .distinct()
                        .sorted()
                        .toList(),
                priced.catalogue().workshop(),
                "Caution",
                "en");
        page.add(table(jobs)).frozen(2);
        return page.signatures("Released by", "Inspected by");
    }

    private TableBuilder table(List<Job> jobs) {
        TableBuilder table = Table.named("make").columns(columns());
        jobs.forEach(job -> fill(table.row(job.part().number().text()), job));
        BigDecimal minutes = jobs.stream().map(Job::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
        table.total("all", "All parts").sum("minutes", minutes);
        return table;
    }

    private Column[] columns() {
        return new Column[] {
            Column.text("part", "Part number").atMost(12),
            Column.text("revision", "Rev.").atMost(4),
            Column.text("name", "Name").atMost(36),
            Column.text("drawing", "Drawing").atMost(12),
            Column.text("issue", "Issue").atMost(5),
            Column.text("material", "Material").atMost(28),
            Column.text("finish", "Finish").atMost(16),
            Column.quantity("count", "Make"),
            Column.quantity("extra", "Of them extra").atMost(8),
            Column.decimal("minutes", "Time", 1).in("min"),
            day("release", "Release by", "Release"),
            day("need", "Needed by", "Needed"),
            Column.blank("inspected", "Inspected").atMost(9),
            Column.signature("firstOff", "First-off, signature")
        };
    }

    private Column day(String key, String heading, String before) {
        return due == null
                ? Column.whole(key, before + " before the kit is due")
                        .in("days")
                        .atMost(14)
                : Column.date(key, heading);
    }

    private void fill(RowBuilder row, Job job) {
        row.put("part", job.part().number().text())
                .put("revision", job.part().revision())
                .put("name", job.part().name().english())
                .put("material", material(job))
                .put("finish", job.finish())
                .put("count", job.count());
        Drawing drawing = job.part().making().drawing();
        if (drawing != null) {
            row.put("drawing", drawing.number()).put("issue", drawing.issue());
        }
        if (job.extra().signum() > 0) {
            row.put("extra", job.extra());
        }
        if (JobCardsPage.has(job)) {
            String sum = "subtotal-" + job.part().number();
            row.put("minutes", cell(PageNames.JOB_CARDS, "steps", sum, "minutes"), job.minutes());
        }
        Days.startBy(row, "release", job.timing(), due);
        Days.readyBy(row, "need", job.timing(), due);
    }

    private String material(Job job) {
        String name = job.part().making().material();
        return name == null ? "" : says(name);
    }

    private String says(String name) {
        Material material = priced.catalogue().materials().get(name);
        return material == null ? name : material.says();
    }
}
