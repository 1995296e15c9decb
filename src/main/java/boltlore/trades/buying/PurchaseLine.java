package boltlore.trades.buying;

import boltlore.catalogue.Buying;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Offer;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.Digits;
import boltlore.netting.Netting;
import boltlore.netting.PlannedReceipt;
import boltlore.trades.costing.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * One part to buy at a time, of its preferred supplier. The quantity is in the part's unit.
 *
 * @param orderBy the last day on which it comes in time
 * @param lateDays by which that day is past; 0 where it is not
 * @param unitCost at this quantity, in the supplier's currency
 * @param homeUnitCost the same in the workshop's currency
 * @param homeCost of the line, rounded half-up to the minor unit
 * @param receipt that it was planned as
 */
public record PurchaseLine(
        Part part,
        BigDecimal quantity,
        LocalDate orderBy,
        LocalDate neededOn,
        int lateDays,
        Currency currency,
        BigDecimal unitCost,
        BigDecimal homeUnitCost,
        BigDecimal cost,
        BigDecimal homeCost,
        PlannedReceipt receipt) {

    private static final Comparator<PurchaseLine> BY_SUPPLIER = Comparator.comparing(PurchaseLine::supplier)
            .thenComparing(PurchaseLine::orderBy)
            .thenComparing(line -> line.part().number());

    static List<PurchaseLine> of(Netting netting, Catalogue catalogue) {
        return netting.planned().stream()
                .filter(receipt -> catalogue.part(receipt.item().part()).source() == Source.BUY)
                .filter(receipt -> receipt.item().finish().isEmpty())
                .map(receipt -> of(receipt, netting, catalogue))
                .sorted(BY_SUPPLIER)
                .toList();
    }

    private static PurchaseLine of(PlannedReceipt receipt, Netting netting, Catalogue catalogue) {
        Part part = catalogue.part(receipt.item().part());
        Currency home = catalogue.workshop().currency();
        Optional<Offer> offer = offers(part).stream().findFirst();
        Currency currency = offer.map(Offer::currency).orElse(home);
        BigDecimal unitCost =
                offer.map(each -> each.at(receipt.quantity()).cost()).orElse(part.cost());
        BigDecimal homeUnitCost =
                offer.map(each -> each.at(receipt.quantity()).homeCost()).orElse(part.cost());
        return new PurchaseLine(
                part,
                receipt.quantity(),
                StoresNow.date(receipt.release()),
                StoresNow.date(receipt.due()),
                receipt.lateBy(netting.now()),
                currency,
                unitCost,
                homeUnitCost,
                new MinorUnit(currency).round(receipt.quantity().multiply(unitCost)),
                new MinorUnit(home).round(receipt.quantity().multiply(homeUnitCost)),
                receipt);
    }

    private static List<Offer> offers(Part part) {
        Buying buying = part.buying();
        return buying == null ? List.of() : buying.offers();
    }

    public String supplier() {
        return part.buying() == null ? "" : part.buying().supplier();
    }

    public String orderCode() {
        return part.buying() == null ? "" : part.buying().orderCode();
    }

    /** Another supplier who would deliver it sooner. */
    Optional<Offer> sooner() {
        return offers(part).stream()
                .skip(1)
                .filter(offer -> offer.leadDays() < part.leadDays())
                .min(Comparator.comparingInt(Offer::leadDays));
    }

    /** 'BL-1001 4, BL-1002 2, stock 4'. */
    static String says(Netting.Asked asked) {
        return says(asked, UnaryOperator.identity());
    }

    /** @param numbers how the reader's language writes them */
    static String says(Netting.Asked asked, UnaryOperator<String> numbers) {
        String orders = asked.outside().entrySet().stream()
                .map(each -> each.getKey() + " " + numbers.apply(Digits.plain(each.getValue())))
                .collect(Collectors.joining(", "));
        String stays = asked.stays().signum() > 0 ? "stock " + Digits.plain(asked.stays()) : "";
        return orders.isEmpty() || stays.isEmpty() ? orders + stays : orders + ", " + stays;
    }
}
