package boltlore.trades.shipping;

import boltlore.bill.Item;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.explanation.ChoiceWords;
import boltlore.order.Extra;
import boltlore.order.Order;
import boltlore.report.CautionNotes;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Phrases;
import boltlore.report.PrintSetup;
import boltlore.report.Signatures;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.picking.OnHold;
import boltlore.trades.picking.ReusedTable;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The packing list that goes with the crates, in the order's language. */
final class PackingPage {

    private static final Kind KG = Kind.decimal(1).in("kg");

    private final Shipment shipment;
    private final Map<String, Finish> finishes;
    private final Phrases phrases;
    private final LoadWords words;

    private PackingPage(Shipment shipment, Map<String, Finish> finishes, LoadWords words) {
        this.shipment = shipment;
        this.finishes = finishes;
        this.phrases = words.phrases();
        this.words = words;
    }

    static PageBuilder compose(Shipment shipment, Map<String, Finish> finishes, LoadWords words) {
        PackingPage packing = new PackingPage(shipment, finishes, words);
        Phrases phrases = words.phrases();
        PageBuilder page = Page.named(phrases.say("page")).in(words.language()).print(print(shipment, phrases));
        page.title(phrases.say("title")).add(packing.particulars()).note(phrases.say("intro"));
        packing.cautions(page);
        page.heading(phrases.say("chosen"))
                .note(String.join(". ", ChoiceWords.say(shipment.order(), words.language())) + ".");
        PackedParts parts = new PackedParts(shipment, finishes, words);
        page.add(parts.byCrate());
        packing.rest(page);
        List<TableBuilder> numbers = parts.numbers();
        if (!numbers.isEmpty()) {
            page.heading(phrases.say("numbers"));
            numbers.forEach(page::add);
        }
        return page.add(new Signatures(List.of(phrases.say("packed"), phrases.say("received")), phrases.say("date")));
    }

    /** How a page in the order's language prints. */
    static PrintSetup print(Shipment shipment, Phrases phrases) {
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
        if (!order.chassis().isEmpty()) {
            says.say("chassis", phrases.say("chassis"), order.chassis());
        }
        if (!order.partner().isEmpty()) {
            says.say("partner", phrases.say("partner"), order.partner());
        }
        says.say("sender", phrases.say("sender"), shipment.parties().seller().inLine());
        shipment.parties()
                .consignee()
                .ifPresent(consignee -> says.say("consignee", phrases.say("consignee"), consignee.inLine()));
        return masses(says);
    }

    private ParticularsBuilder masses(ParticularsBuilder says) {
        if (shipment.order().placed() != null) {
            says.say("placed", phrases.say("placed"), shipment.order().placed());
        }
        if (shipment.order().due() != null) {
            says.say("due", phrases.say("due"), shipment.order().due());
        }
        return says.say(
                        "crates",
                        phrases.say("crates"),
                        String.valueOf(shipment.crates().size()))
                .say("net", phrases.say("net"), KG, shipment.netKg())
                .say("gross", phrases.say("gross"), KG, shipment.grossKg());
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
        if (!shipment.onHold().isEmpty()) {
            page.heading(phrases.say("undecided"))
                    .note(phrases.say("undecidedSays"))
                    .add(undecided());
        }
        if (!shipment.byCustomer().isEmpty()) {
            page.heading(phrases.say("customerSupplies")).add(byCustomer());
        }
        List<Item> reused = shipment.bill().reused().toList();
        if (!reused.isEmpty()) {
            page.heading(phrases.say("reused"))
                    .note(phrases.say("reusedSay"))
                    .add(ReusedTable.in(words.language(), phrases).of(reused));
        }
    }

    /** The pieces that the kit loses if the brackets are left out. */
    private TableBuilder undecided() {
        return TableSpec.<OnHold>named("undecided")
                .text(
                        "part",
                        phrases.say("part"),
                        16,
                        held -> held.part().number().text())
                .text("name", phrases.say("name"), 50, held -> name(held.part()))
                .text("finish", phrases.say("finish"), 20, held -> finish(held.finish()))
                .code("finish-id", OnHold::finish)
                .quantity("quantity", phrases.say("quantity"), "", OnHold::quantity)
                .text(
                        "unit",
                        phrases.say("unit"),
                        8,
                        held -> phrases.unit(held.part().unit(), held.quantity()))
                .of(shipment.onHold());
    }

    private TableBuilder byCustomer() {
        return TableSpec.<Extra>named("by-customer")
                .text(
                        "extra",
                        phrases.say("extra"),
                        60,
                        extra -> extra.part() == null
                                ? extra.says()
                                : extra.part().text())
                .quantity("quantity", phrases.say("quantity"), "", Extra::quantity)
                .text("unit", phrases.say("unit"), extra -> phrases.unit(extra.unit(), extra.quantity()))
                .of(shipment.byCustomer());
    }

    /** Part by part, for programs. */
    static TableBuilder parts(Shipment shipment, Map<String, Finish> finishes, LoadWords words) {
        return new PackingPage(shipment, finishes, words).packed();
    }

    private TableBuilder packed() {
        TableSpec<Packed> spec = packing()
                .code("bag-id", packed -> packed.goods().bag())
                .code("finish-id", packed -> packed.goods().finish());
        TableBuilder table = spec.empty();
        for (Crate crate : shipment.crates()) {
            table.group("crate-" + crate.number(), PackedParts.heading(shipment, crate, words));
            crate.packed().forEach(packed -> spec.add(table, "", packed));
            table.subtotal(phrases.say("net")).sum("mass", crate.netKg());
        }
        table.total("total", phrases.say("total")).sumOfSubtotals("mass", shipment.netKg());
        return table;
    }

    private TableSpec<Packed> packing() {
        return TableSpec.<Packed>named("packing")
                .text(
                        "part",
                        phrases.say("part"),
                        16,
                        packed -> part(packed, part -> part.number().text(), ""))
                .text(
                        "name",
                        phrases.say("name"),
                        34,
                        packed -> part(packed, this::name, packed.goods().name()))
                .text(
                        "finish",
                        phrases.say("finish"),
                        16,
                        packed -> finish(packed.goods().finish()))
                .text(
                        "bag",
                        phrases.say("bag"),
                        20,
                        packed -> words.bag(packed.goods().bag()))
                .quantity("quantity", phrases.say("quantity"), "", Packed::quantity)
                .text(
                        "unit",
                        phrases.say("unit"),
                        8,
                        packed -> phrases.unit(packed.goods().unit(), packed.quantity()))
                .decimal(
                        "mass",
                        phrases.say("mass"),
                        "kg",
                        2,
                        packed -> packed.goods().eachKg() == null ? null : packed.kg());
    }

    private static String part(Packed packed, Function<Part, String> says, String otherwise) {
        Part part = packed.goods().part();
        return part == null ? otherwise : says.apply(part);
    }

    private String name(Part part) {
        return part.name().in(words.language());
    }

    private String finish(String name) {
        Finish finish = finishes.get(name);
        return finish == null ? name : finish.says().in(words.language());
    }
}
