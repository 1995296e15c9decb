package boltlore.sheets.bill;

import static boltlore.sheets.Formula.cell;

import boltlore.catalogue.Drawing;
import boltlore.measure.PartNumber;
import boltlore.picking.HeldBack;
import boltlore.picking.PickingList;
import boltlore.pricing.Job;
import boltlore.pricing.PricedBill;
import boltlore.resolution.FamilyPlan;
import boltlore.sheets.Column;
import boltlore.sheets.PageBuilder;
import boltlore.sheets.RowBuilder;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What is to make: one row for each part, to release, count, inspect and sign. */
final class MakePage {

    private final PricedBill priced;
    private final OrderHead head;
    private final @Nullable LocalDate due;
    private final MakingWords words;
    private final List<Job> jobs;
    private final Map<PartNumber, BigDecimal> undecided;

    MakePage(PricedBill priced, OrderHead head) {
        this.priced = priced;
        this.head = head;
        this.due = priced.bill().order().due();
        this.words = new MakingWords(priced.catalogue().materials());
        this.jobs = Job.of(priced);
        this.undecided = undecided(priced);
    }

    /** How many of each part belong to brackets of which nobody has said yet whether they ship. */
    private static Map<PartNumber, BigDecimal> undecided(PricedBill priced) {
        FamilyPlan plan = new FamilyPlan(
                priced.catalogue(), priced.bill().order().choices().family());
        return PickingList.of(plan, priced.bill()).heldBack().stream()
                .collect(Collectors.toMap(held -> held.part().number(), HeldBack::quantity, BigDecimal::add));
    }

    PageBuilder page() {
        PageBuilder page = head.page(PageNames.TO_MAKE, "To make");
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
        page.add(table()).frozen(2);
        return page.signatures("Released by", "Inspected by");
    }

    private TableBuilder table() {
        TableBuilder table = Table.named("make").columns(columns());
        jobs.forEach(job -> fill(table.row(job.part().number().text()), job));
        BigDecimal minutes = jobs.stream().map(Job::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
        table.total("all", "All parts").sum("minutes", minutes);
        return table;
    }

    private Column[] columns() {
        return Stream.of(all()).filter(this::needed).toArray(Column[]::new);
    }

    /** Columns that would stay empty are left out. */
    private boolean needed(Column column) {
        return switch (column.key()) {
            case "extra" -> jobs.stream().anyMatch(job -> job.extra().signum() > 0);
            case "undecided" -> jobs.stream().anyMatch(this::isUndecided);
            default -> true;
        };
    }

    private boolean isUndecided(Job job) {
        return undecided.containsKey(job.part().number());
    }

    private Column[] all() {
        return new Column[] {
            Column.text("part", "Part number").atMost(12),
            Column.text("revision", "Rev.").atMost(4),
            Column.text("name", "Name").atMost(32),
            Column.text("drawing", "Drawing").atMost(12),
            Column.text("issue", "Issue").atMost(5),
            Column.text("material", "Material").atMost(24),
            Column.text("cuts", "Cut for each").atMost(20),
            Column.text("finish", "Finish").atMost(14),
            Column.quantity("count", "Make"),
            Column.quantity("extra", "Of them extra"),
            Column.quantity("undecided", "Not yet decided"),
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
                .put("material", words.material(job.part().making()))
                .put("cuts", words.cuts(job.part().making()))
                .put("finish", job.finish())
                .put("count", job.count());
        Drawing drawing = job.part().making().drawing();
        if (drawing != null) {
            row.put("drawing", drawing.number()).put("issue", drawing.issue());
        }
        if (job.extra().signum() > 0) {
            row.put("extra", job.extra());
        }
        if (isUndecided(job)) {
            row.put("undecided", undecided.getOrDefault(job.part().number(), BigDecimal.ZERO));
        }
        if (JobCardsPage.has(job)) {
            String sum = "subtotal-" + job.part().number();
            row.put("minutes", cell(PageNames.JOB_CARDS, "steps", sum, "minutes"), job.minutes());
        }
        Days.startBy(row, "release", job.timing(), due);
        Days.readyBy(row, "need", job.timing(), due);
    }
}
