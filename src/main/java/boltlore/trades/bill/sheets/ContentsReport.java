package boltlore.trades.bill.sheets;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.catalogue.Tracked;
import boltlore.catalogue.Workshop;
import boltlore.explanation.ChoiceWords;
import boltlore.order.Order;
import boltlore.report.CautionNotes;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Phrases;
import boltlore.report.PrintSetup;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.report.Signatures;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.picking.PickingList;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What customer and partner get with the kit: what is in it, in the order's language. It is made from the bill without
 * prices, so that no cost can stand in it.
 */
public final class ContentsReport {

    private final Workshop workshop;
    private final Bill bill;
    private final Order order;
    private final Phrases phrases;
    private final PickingList packed;
    private final ContentsTables tables;

    private ContentsReport(FamilyPlan plan, Bill bill, PickingList packed) {
        this.workshop = plan.catalogue().workshop();
        this.bill = bill;
        this.order = bill.order();
        this.phrases = phrases(order.language());
        this.packed = packed;
        this.tables = new ContentsTables(plan.catalogue(), order.language(), phrases);
    }

    /** The words of the contents list in that language. */
    static Phrases phrases(String language) {
        return Phrases.of(ContentsReport.class, "contents", language);
    }

    public static Report compose(FamilyPlan plan, Bill bill, PickingList packed) {
        return new ContentsReport(plan, bill, packed).report();
    }

    private Report report() {
        ReportBuilder report = Report.named("contents", phrases.say("title"))
                .about(phrases.say("order") + " " + order.name())
                .by(workshop.name())
                .in(order.language());
        if (order.placed() != null) {
            report.dated(order.placed());
        }
        report.page(page());
        if (packed.bags().stream()
                .flatMap(bags -> bags.rows().stream())
                .anyMatch(row -> row.part().tracked() == Tracked.SERIAL)) {
            String title = phrases.say("tracked");
            report.page(Page.named(title).print(print()).title(title).add(tables.numbers(packed.bags())));
        }
        return report.build();
    }

    private PageBuilder page() {
        PageBuilder page = Page.named(phrases.say("page")).print(print());
        head(page);
        page.heading(phrases.say("parts")).add(tables.parts(packed.bags())).frozen(1);
        if (!packed.extras().isEmpty()) {
            page.heading(phrases.say("extras")).add(tables.extras(packed.extras()));
        }
        if (!packed.onHold().isEmpty()) {
            page.heading(phrases.say("undecided"))
                    .note(phrases.say("undecidedSays"))
                    .add(tables.undecided(packed.onHold()));
        }
        List<Item> reused = bill.reused().toList();
        if (!reused.isEmpty()) {
            page.heading(phrases.say("reused")).note(phrases.say("reusedSay")).add(tables.reused(reused));
        }
        return page.add(new Signatures(List.of(phrases.say("packed"), phrases.say("received")), phrases.say("date")));
    }

    private PrintSetup print() {
        return PrintSetup.PORTRAIT
                .withCount(new PrintSetup.PageCount(phrases.say("pageWord"), phrases.say("pageOf")))
                .withFooter(workshop.name() + " · " + phrases.say("order") + " " + order.name());
    }

    private void head(PageBuilder page) {
        page.title(phrases.say("title")).add(particulars()).note(phrases.say("intro"));
        CautionNotes.add(
                page, bill.resolved().kit().cautionsOn("contents"), workshop, phrases.say("caution"), order.language());
        page.heading(phrases.say("chosen")).note(String.join(". ", ChoiceWords.say(order, order.language())) + ".");
    }

    private ParticularsBuilder particulars() {
        String vehicle = order.choices().family().says().in(order.language());
        ParticularsBuilder says = Particulars.named("order")
                .say("order", phrases.say("order"), order.name())
                .say("vehicle", phrases.say("vehicle"), vehicle)
                .say("customer", phrases.say("customer"), order.customer());
        if (!order.partner().isEmpty()) {
            says.say("partner", phrases.say("partner"), order.partner());
        }
        day(says, "placed", order.placed());
        day(says, "due", order.due());
        return says;
    }

    private void day(ParticularsBuilder says, String name, @Nullable LocalDate day) {
        if (day != null) {
            says.say(name, phrases.say(name), day);
        }
    }
}
