package boltlore.book.orders;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.book.KitLine;
import boltlore.book.KitLines;
import boltlore.book.KitNeed;
import boltlore.book.Offer;
import boltlore.catalogue.Drawing;
import boltlore.catalogue.Part;
import boltlore.json.JsonOut;
import boltlore.trades.KitInWork;
import boltlore.trades.buying.OrderNeeds;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.costing.quote.QuotedExtra;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;

/** A kit and its quotation as the contents that the book keeps. */
final class Kitted {

    /** As many as a quantity of the stores has at most. */
    private static final int DECIMALS = 6;

    private Kitted() {}

    static byte[] lines(Bill bill) {
        return KitLines.write(bill.all().map(Kitted::line).toList());
    }

    private static KitLine line(Item item) {
        Part part = item.part();
        Drawing drawing = part.making().drawing();
        return new KitLine(
                item.level(),
                item.position().name().text(),
                part.number().text(),
                part.revision(),
                item.coated() ? item.finish() : "",
                item.quantity(),
                part.unit(),
                part.source().name().toLowerCase(Locale.ROOT),
                item.picked(),
                part.tracked() == null ? "" : part.tracked().name().toLowerCase(Locale.ROOT),
                drawing == null ? "" : drawing.number(),
                drawing == null ? "" : drawing.issue());
    }

    /** A part that is added to a shipped kit, at no position of it. */
    static KitLine served(Part part, BigDecimal quantity) {
        Drawing drawing = part.making().drawing();
        return new KitLine(
                1,
                "service",
                part.number().text(),
                part.revision(),
                "",
                quantity,
                part.unit(),
                part.source().name().toLowerCase(Locale.ROOT),
                true,
                part.tracked() == null ? "" : part.tracked().name().toLowerCase(Locale.ROOT),
                drawing == null ? "" : drawing.number(),
                drawing == null ? "" : drawing.issue());
    }

    /** What the stores are asked for, each so many days before the kit is due. */
    static List<KitNeed> needs(KitInWork kit) {
        OrderNeeds needs = OrderNeeds.of(kit, kit.today());
        SortedMap<KitNeed, BigDecimal> sums = new TreeMap<>(Comparator.comparing(KitNeed::part)
                .thenComparing(KitNeed::finish)
                .thenComparing(KitNeed::daysBefore));
        needs.needs()
                .forEach(need -> sums.merge(
                        new KitNeed(
                                need.item().part().text(),
                                need.item().finish(),
                                Math.toIntExact(needs.due().toEpochDay()) - need.period(),
                                BigDecimal.ZERO),
                        need.quantity().setScale(DECIMALS, RoundingMode.HALF_UP),
                        BigDecimal::add));
        return sums.entrySet().stream()
                .filter(need -> need.getValue().signum() > 0)
                .map(need -> new KitNeed(
                        need.getKey().part(),
                        need.getKey().finish(),
                        need.getKey().daysBefore(),
                        need.getValue().stripTrailingZeros()))
                .toList();
    }

    static Offer offer(Quotation quotation) {
        return new Offer(
                quotation.on(),
                quotation.validUntil(),
                quotation.currency().getCurrencyCode(),
                quotation.net(),
                quotation.total(),
                quotation.leadDays());
    }

    /** The quotation in full; it holds no cost, as the customer's does not. */
    static byte[] figures(Quotation quotation) {
        JsonOut.Members figures = offer(quotation).json();
        if (quotation.rate() != null) {
            figures.put("rate", quotation.rate().forOne())
                    .put("rateOf", quotation.rate().date().toString());
        }
        figures.put("kitPrice", quotation.kitPrice())
                .put("extras", JsonOut.list(quotation.extras(), Kitted::extra))
                .put("listPrice", quotation.listPrice())
                .put("discountPercent", quotation.discountPercent())
                .put("discount", quotation.discount());
        if (quotation.tax() != null) {
            figures.put("taxPercent", quotation.tax().percent());
        }
        return figures.put("taxAmount", quotation.taxAmount()).written().getBytes(StandardCharsets.UTF_8);
    }

    /** What kit and extras cost the workshop; for the workshop only. */
    static byte[] cost(OrderPricing pricing) {
        BigDecimal direct =
                pricing.costed().totals().cost().add(pricing.costed().extrasCost());
        return JsonOut.object()
                .put("currency", pricing.costed().currency().getCurrencyCode())
                .put("direct", direct)
                .put("full", pricing.found().map(found -> found.cost().total()).orElse(direct))
                .written()
                .getBytes(StandardCharsets.UTF_8);
    }

    private static JsonOut extra(QuotedExtra extra) {
        return JsonOut.object()
                .putIfAny("part", extra.part() == null ? null : extra.part().text())
                .putIfAny("says", extra.says())
                .put("quantity", extra.quantity())
                .put("unit", extra.unit())
                .put("suppliedByCustomer", extra.suppliedByCustomer())
                .put("price", extra.price());
    }
}
