package boltlore.trades.bill.sheets;

import static boltlore.report.Formula.cell;
import static boltlore.report.Formula.product;

import boltlore.catalogue.Buying;
import boltlore.catalogue.Offer;
import boltlore.catalogue.Part;
import boltlore.measure.Digits;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.MinorUnit;
import boltlore.trades.costing.Purchase;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.picking.PickingList;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is to buy, by supplier. */
final class BuyPage {

    private final OrderPricing pricing;
    private final CostedBill costed;
    private final OrderHead head;
    private final List<Purchase> purchases;
    private final TableSpec<Purchase> spec = TableSpec.named("buy");

    /** @param packed whose bags hold spares, which are bought too */
    BuyPage(OrderPricing pricing, OrderHead head, PickingList packed) {
        this.pricing = pricing;
        this.costed = pricing.costed();
        this.head = head;
        this.purchases = Purchase.of(costed, packed.spares());
        what();
        toOrder(costed.bill().order().due());
        spec.besideThePaper();
        howMany();
        if (purchases.stream().anyMatch(purchase -> !offers(purchase).isEmpty())) {
            asked(costed.currency());
        }
    }

    private void what() {
        MinorUnit unit = new MinorUnit(costed.currency());
        spec.text("supplierPart", "Supplier part no.", 14, Purchase::orderCode)
                .text(
                        "part",
                        "Part number",
                        12,
                        purchase -> purchase.part().number().text())
                .text("revision", "Rev.", 4, purchase -> purchase.part().revision())
                .said("name", "Name", 40, purchase -> purchase.part().name())
                .quantity("ordered", "To order", "", Purchase::ordered)
                .text("unit", "Unit", 5, purchase -> purchase.part().unit())
                .column(
                        Column.money("cost", "Cost", costed.currency()),
                        purchase -> Cell.of(
                                product(cell("ordered"), cell("unitCost")).rounded(unit.digits()), purchase.cost()));
    }

    private void howMany() {
        int digits = new MinorUnit(costed.currency())
                .digits(purchases.stream().map(Purchase::part).map(Part::cost), 4);
        spec.column(
                        new Column("unitCost", "Unit cost", Kind.money(costed.currency(), digits)),
                        purchase -> Cell.of(purchase.part().cost()))
                .quantity("needed", "Needed", "", Purchase::needed);
        if (purchases.stream().anyMatch(purchase -> purchase.spares().signum() > 0)) {
            spec.quantity("spares", "Of them spares", "", purchase -> told(purchase.spares()));
        }
        if (purchases.stream().anyMatch(purchase -> purchase.extra().signum() > 0)) {
            spec.quantity("extra", "Of them extra", "", purchase -> told(purchase.extra()));
        }
        spec.percent("scrap", "Scrap", 1, purchase -> told(purchase.part().scrapPercent()))
                .decimal(
                        "withScrap",
                        "With scrap",
                        "",
                        2,
                        purchase -> told(purchase.part().scrapPercent()) == null ? null : purchase.withScrap())
                .quantity("pack", "Pack of", "", purchase -> told(purchase, Buying::packOf))
                .quantity("minimumOrder", "MOQ", "", purchase -> told(purchase, Buying::minimumOrder));
    }

    /** What the preferred supplier asks at this quantity, and who else may be asked. */
    private void asked(Currency home) {
        spec.text(
                        "offer",
                        "Price asked",
                        22,
                        purchase -> offers(purchase).stream()
                                .findFirst()
                                .map(offer -> price(offer, purchase, home))
                                .orElse(null))
                .text(
                        "fallback",
                        "Else from",
                        34,
                        purchase -> offers(purchase).stream()
                                .skip(1)
                                .findFirst()
                                .map(offer -> offer.supplier() + ", " + offer.orderCode() + ": "
                                        + price(offer, purchase, home) + ", " + offer.leadDays() + " days")
                                .orElse(null));
    }

    private static List<Offer> offers(Purchase purchase) {
        Buying buying = purchase.part().buying();
        return buying == null ? List.of() : buying.offers();
    }

    /** Of the kit's quantity, as the cost of the kit is reckoned: 'USD 14.20 from 10 = EUR 12.6786'. */
    private static String price(Offer offer, Purchase purchase, Currency home) {
        Offer.PriceBreak asked = offer.at(offer.toOrder(purchase.kitWithScrap()));
        String cost = offer.currency() + " " + asked.cost().toPlainString() + " from " + Digits.plain(asked.from());
        return offer.currency().equals(home)
                ? cost
                : cost + " = " + home + " " + asked.homeCost().toPlainString();
    }

    private void toOrder(@Nullable LocalDate due) {
        Days.add(
                        spec,
                        "orderBy",
                        "Order by",
                        "Order",
                        due,
                        purchase -> purchase.timing().startBy(due),
                        purchase -> purchase.timing().startDays())
                .box(Column.tick("ordering", "On order"))
                .box(Column.tick("fromStock", "From stock"));
    }

    private static @Nullable BigDecimal told(Purchase purchase, Function<Buying, @Nullable BigDecimal> number) {
        Buying buying = purchase.part().buying();
        return buying == null ? null : told(number.apply(buying));
    }

    private static @Nullable BigDecimal told(@Nullable BigDecimal number) {
        return number == null || number.signum() <= 0 ? null : number;
    }

    PageBuilder page() {
        PageBuilder page = head.page(PageNames.TO_BUY, "To buy")
                .print(head.portrait())
                .note(
                        "To order: the quantity with scrap and the bags' spares, rounded up to whole packs and the minimum"
                                + " order quantity (MOQ); what is left over goes to the stores, what they hold need not be bought."
                                + " Dates are calendar days back from the day the kit is due. Beside the printed columns:"
                                + " what is needed, packs, unit cost, other suppliers.")
                .add(table())
                .frozen(2);
        ExtrasTable.add(page, pricing);
        return page;
    }

    private TableBuilder table() {
        TableBuilder table = spec.empty();
        Map<String, List<Purchase>> bySupplier = purchases.stream()
                .collect(Collectors.groupingBy(Purchase::supplier, LinkedHashMap::new, Collectors.toList()));
        bySupplier.forEach((supplier, some) -> {
            table.group(supplier, says(supplier));
            some.forEach(purchase -> spec.add(table, "", purchase));
            table.subtotal("To " + supplier).sum("cost", cost(some));
        });
        table.total("all", "All suppliers").sumOfSubtotals("cost", cost(purchases));
        return table;
    }

    private String says(String supplier) {
        String says = costed.catalogue().workshop().suppliers().getOrDefault(supplier, "");
        return says.isEmpty() ? supplier : supplier + ": " + says;
    }

    private static BigDecimal cost(List<Purchase> some) {
        return some.stream().map(Purchase::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
