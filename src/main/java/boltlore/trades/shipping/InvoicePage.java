package boltlore.trades.shipping;

import boltlore.measure.Party;
import boltlore.order.Order;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Phrases;
import boltlore.report.PrintSetup;
import boltlore.report.RowBuilder;
import boltlore.report.Signatures;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.TaxFree;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** The pro-forma invoice that customs are shown: goods by code and origin with their values, in the order's language. */
final class InvoicePage {

    static final String FILE = "pro-forma-invoice";

    private static final int NAMED = 3;
    private static final Kind KG = Kind.decimal(1).in("kg");

    private final Shipment shipment;
    private final Phrases phrases;
    private final String language;

    InvoicePage(Shipment shipment) {
        this.shipment = shipment;
        this.language = shipment.order().language();
        this.phrases = phrases(language);
    }

    static Phrases phrases(String language) {
        return Phrases.of(InvoicePage.class, "invoice", language);
    }

    PageBuilder page() {
        PrintSetup print = PrintSetup.PORTRAIT
                .withCount(new PrintSetup.PageCount(phrases.say("pageWord"), phrases.say("pageOf")))
                .withFooter(shipment.workshop().name() + " · " + phrases.say("title") + " " + number());
        PageBuilder page = Page.named(phrases.say("title")).in(language).print(print);
        page.title(phrases.say("title")).add(head()).add(lines());
        if (shipment.price() == null) {
            page.note("values", phrases.say("noValues"));
        } else {
            page.note("values", phrases.say("values"));
            page.note("shares", phrases.say("shares"));
        }
        TaxFree.of(shipment.parties())
                .filter(TaxFree.EXPORT::equals)
                .ifPresent(why -> page.note("tax-free", why.says(shipment.parties(), language)));
        return page.caution(phrases.say("draft"), phrases.say("checked"))
                .add(new Signatures(List.of(phrases.say("signed")), phrases.say("date")));
    }

    /** 'PF-BL-1001-2': of the second version of its quotation. */
    private String number() {
        SellingPrice price = shipment.price();
        return "PF-" + shipment.order().name() + "-"
                + (price == null ? 1 : price.terms().version());
    }

    private ParticularsBuilder head() {
        Order order = shipment.order();
        SellingPrice price = shipment.price();
        ParticularsBuilder says = Particulars.named("invoice").say("number", phrases.say("number"), number());
        if (price != null && price.on() != null) {
            says.say("on", phrases.say("on"), price.on());
        }
        says.say("order", phrases.say("order"), order.name());
        party(says, "seller", shipment.parties().seller());
        shipment.parties()
                .buyer()
                .ifPresentOrElse(
                        buyer -> party(says, "buyer", buyer),
                        () -> says.say("buyer", phrases.say("buyer"), order.customer()));
        shipment.parties()
                .consignee()
                .ifPresentOrElse(
                        consignee -> says.say("consignee", phrases.say("consignee"), consignee.inLine()),
                        () -> says.leave("consignee", phrases.say("consignee")));
        says.say("reason", phrases.say("reason"), phrases.say("sale"))
                .say(
                        "packages",
                        phrases.say("packages"),
                        Kind.whole(),
                        BigDecimal.valueOf(shipment.crates().size()))
                .say("net", phrases.say("net"), KG, shipment.netKg())
                .say("gross", phrases.say("gross"), KG, shipment.grossKg());
        return price == null ? says : terms(says, price);
    }

    private ParticularsBuilder terms(ParticularsBuilder says, SellingPrice price) {
        if (price.terms().delivery() == null) {
            says.leave("delivery", phrases.say("delivery"));
        } else {
            says.say(
                    "delivery",
                    phrases.say("delivery"),
                    price.terms().delivery().says());
        }
        return says.say("currency", phrases.say("currency"), price.currency().getCurrencyCode());
    }

    private void party(ParticularsBuilder says, String key, Party party) {
        says.say(key, phrases.say(key), party.inLine());
        if (!party.taxNumber().isEmpty()) {
            String called = phrases.say(party.hasVatNumber() ? "vatNumber" : "taxNumber");
            says.say(key + "-tax-number", called, party.taxNumber());
        }
        if (!party.eori().isEmpty()) {
            says.say(key + "-eori", "EORI", party.eori());
        }
    }

    private TableBuilder lines() {
        SellingPrice price = shipment.price();
        TableSpec<CustomsLine> spec = TableSpec.<CustomsLine>named("customs-lines")
                .text("hs", phrases.say("hs"), 12, line -> line.hs().isEmpty() ? phrases.say("unknown") : line.hs())
                .text("origin", phrases.say("origin"), 8, line -> line.origin().isEmpty() ? "–" : line.origin())
                .text("goods", phrases.say("goods"), 44, this::goods)
                .text("quantity", phrases.say("quantity"), 14, this::quantity)
                .decimal("net", phrases.say("netShort"), "kg", 2, CustomsLine::netKg);
        if (price != null) {
            spec.money("value", phrases.say("value"), price.currency(), CustomsLine::value)
                    .besideThePaper()
                    .decimal(
                            "per-kg",
                            phrases.say("perKg"),
                            "",
                            2,
                            line -> CustomsMaker.perKg(shipment.selling(), line.hs()));
        }
        TableBuilder table = spec.of(shipment.customs());
        BigDecimal netKg = shipment.customs().stream().map(CustomsLine::netKg).reduce(BigDecimal.ZERO, BigDecimal::add);
        RowBuilder total = table.total("total", phrases.say("total")).sum("net", netKg);
        if (price != null) {
            total.sum("value", price.total());
        }
        return table;
    }

    private String quantity(CustomsLine line) {
        String counted = line.pieces().signum() == 0
                ? ""
                : phrases.number(line.pieces()) + " " + phrases.unit("each", line.pieces());
        String measured = String.join(", ", line.measured());
        return counted.isEmpty() || measured.isEmpty() ? counted + measured : counted + ", " + measured;
    }

    /** The heading's own words where it is among the usual ones, which are English; and the heaviest goods. */
    private String goods(CustomsLine line) {
        List<String> names = line.goods().stream()
                .sorted(Comparator.comparing((Goods goods) -> goods.kg(goods.packed()))
                        .reversed())
                .map(goods -> goods.part() == null
                        ? goods.name()
                        : goods.part().name().in(language))
                .distinct()
                .toList();
        String heading = language.equals("en")
                ? Tariff.of(line.hs()).map(tariff -> tariff.says() + ": ").orElse("")
                : "";
        String more = names.size() > NAMED ? phrases.say("more", String.valueOf(names.size() - NAMED)) : "";
        return heading + names.stream().limit(NAMED).collect(Collectors.joining("; ")) + more;
    }
}
