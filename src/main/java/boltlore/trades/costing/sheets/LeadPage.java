package boltlore.trades.costing.sheets;

import boltlore.catalogue.Part;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.PricedBill;
import boltlore.trades.costing.path.LeadPath;
import boltlore.trades.costing.path.Slot;
import boltlore.trades.costing.path.Step;
import boltlore.trades.costing.quote.Calculation;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What sets the lead time, what comes next, and what to order first. */
final class LeadPage {

    private static final int MOST = 12;

    private final LeadPath path;
    private final @Nullable LocalDate due;

    private LeadPage(Calculation calculation) {
        PricedBill priced = calculation.cost().priced();
        this.path = priced.times().path();
        this.due = priced.bill().order().due();
    }

    static PageBuilder of(Calculation calculation, String footer) {
        return new LeadPage(calculation).page(footer);
    }

    private PageBuilder page(String footer) {
        PageBuilder page = Page.named("Lead time").footer(footer).title("What sets the lead time");
        page.note(LeadWords.chain(path) + " " + LeadWords.gain(path));
        page.heading("The chain that sets it").add(chain());
        page.heading("Order or release these first").add(table("first", path.first(MOST)));
        page.heading("Next to set it").add(table("next", path.next(MOST)));
        return page.note("Days are calendar days; dates are counted back from the day the kit is due"
                + (due == null ? ", which is not given yet" : ", " + due)
                + ". Slack is how late a step may be without moving the day of shipping. A part waits for all that it"
                + " contains; a companion that a part brings must be there when that part is put into something, not when"
                + " it is made. Nothing is taken from stock.");
    }

    private TableBuilder chain() {
        TableBuilder table = Table.named("chain")
                .columns(
                        Column.text("what", "Step").atMost(34),
                        Column.text("part", "Part"),
                        Column.text("name", "Name").atMost(30),
                        Column.whole("days", "Takes").in("days"),
                        startBy(),
                        Column.whole("gain", "Half the days would gain").in("days"));
        for (Slot<Step> slot : path.chain()) {
            RowBuilder row = step(table.row(), slot);
            Part part = slot.activity().what().part();
            if (part != null && slot.activity().what().what() != Step.What.COAT) {
                row.put("gain", path.gainOfHalving(part.number()));
            }
        }
        return table;
    }

    private TableBuilder table(String name, List<Slot<Step>> slots) {
        TableBuilder table = Table.named(name)
                .columns(
                        Column.text("what", "Step").atMost(34),
                        Column.text("part", "Part"),
                        Column.text("name", "Name").atMost(30),
                        Column.whole("days", "Takes").in("days"),
                        startBy(),
                        Column.whole("slack", "Slack").in("days"));
        slots.forEach(slot -> step(table.row(), slot).put("slack", slot.slack()));
        return table;
    }

    private RowBuilder step(RowBuilder row, Slot<Step> slot) {
        Step step = slot.activity().what();
        Part part = step.part();
        if (part != null) {
            row.put("part", part.number().text()).put("name", part.name().english());
        }
        row.put("what", step.what().says()).put("days", slot.activity().days());
        int before = path.days() - slot.latestStart();
        return due == null ? row.put("start", before) : row.put("start", due.minusDays(before));
    }

    /** As on the bill: a date, or days before the kit is due where no day is told. */
    private Column startBy() {
        return due == null
                ? Column.whole("start", "Start before the kit is due").in("days")
                : Column.date("start", "Start by");
    }
}
