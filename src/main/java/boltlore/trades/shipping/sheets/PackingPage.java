package boltlore.trades.shipping.sheets;

import boltlore.catalogue.Finish;
import boltlore.order.Extra;
import boltlore.order.Order;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Phrases;
import boltlore.report.PrintSetup;
import boltlore.report.RowBuilder;
import boltlore.report.Signatures;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.shipping.Shipment;
import java.util.List;
import java.util.Map;

/** The packing list that goes with the crates, in the order's language. */
final class PackingPage {

    private static final Kind KG = Kind.decimal(1);

    private final Shipment shipment;
    private final Phrases phrases;
    private final LoadWords words;

    private PackingPage(Shipment shipment, Phrases phrases) {
        this.shipment = shipment;
        this.phrases = phrases;
        this.words = new LoadWords(
                shipment.workshop(), shipment.shipping(), shipment.order().language(), phrases);
    }

    static PageBuilder of(Shipment shipment, Map<String, Finish> finishes, Phrases phrases) {
        PackingPage packing = new PackingPage(shipment, phrases);
        PageBuilder page = Page.named(phrases.say("page")).print(packing.print());
        page.title(phrases.say("title")).add(packing.particulars()).note(phrases.say("intro"));
        packing.cautions(page);
        page.add(new PackingTable(shipment, finishes, packing.words).table());
        packing.rest(page);
        return page.add(new Signatures(List.of(phrases.say("packed"), phrases.say("received")), phrases.say("date")));
    }

    private PrintSetup print() {
        return PrintSetup.PORTRAIT
                .withCount(new PrintSetup.PageCount(phrases.say("pageWord"), phrases.say("pageOf")))
                .withFooter(shipment.workshop().name() + " · " + phrases.say("order") + " "
                        + shipment.order().name());
    }

    private ParticularsBuilder particulars() {
        Order order = shipment.order();
        ParticularsBuilder says = Particulars.named("order")
                .say("order", phrases.say("order"), order.name())
                .say(
                        "vehicle",
                        phrases.say("vehicle"),
                        order.choices().family().says().in(order.language()))
                .say("customer", phrases.say("customer"), order.customer());
        if (!order.partner().isEmpty()) {
            says.say("partner", phrases.say("partner"), order.partner());
        }
        return masses(says);
    }

    private ParticularsBuilder masses(ParticularsBuilder says) {
        if (shipment.order().due() != null) {
            says.say("due", phrases.say("due"), shipment.order().due());
        }
        return says.say(
                        "crates",
                        phrases.say("crates"),
                        String.valueOf(shipment.crates().size()))
                .say("net", phrases.say("net") + " (kg)", KG, shipment.netKg())
                .say("gross", phrases.say("gross") + " (kg)", KG, shipment.grossKg());
    }

    /** Those of the kit that the workshop puts on what goes to customers. */
    private void cautions(PageBuilder page) {
        CautionNotes.add(
                page,
                shipment.bill().resolved().kit().cautionsOn("contents"),
                shipment.workshop(),
                phrases.say("caution"),
                words.language());
    }

    private void rest(PageBuilder page) {
        if (!shipment.heldBack().isEmpty()) {
            page.heading(phrases.say("undecided")).note(phrases.say("undecidedSays"));
        }
        if (!shipment.byCustomer().isEmpty()) {
            page.heading(phrases.say("customerSupplies")).add(byCustomer());
        }
    }

    private TableBuilder byCustomer() {
        TableBuilder table = Table.named("by-customer")
                .columns(
                        Column.text("extra", phrases.say("extra")).atMost(60),
                        Column.quantity("quantity", phrases.say("quantity")),
                        Column.text("unit", phrases.say("unit")));
        shipment.byCustomer().forEach(extra -> fill(table.row(), extra));
        return table;
    }

    private void fill(RowBuilder row, Extra extra) {
        row.put("extra", extra.part() == null ? extra.says() : extra.part().text())
                .put("quantity", extra.quantity())
                .put("unit", phrases.unit(extra.unit(), extra.quantity()));
    }
}
