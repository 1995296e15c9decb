package boltlore.trades.shipping;

import boltlore.bill.Bill;
import boltlore.catalogue.SellingTerms;
import boltlore.catalogue.ShippedBattery;
import boltlore.catalogue.Shipping;
import boltlore.catalogue.Workshop;
import boltlore.findings.Findings;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import boltlore.order.Order;
import boltlore.trades.Parties;
import boltlore.trades.picking.OnHold;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One order's kit in its crates.
 *
 * @param crates in fitting order
 * @param tooLarge what goes into no crate of the workshop
 * @param onHold what is not packed until the order decides on brackets that support nothing
 * @param customs lines that add up to the price
 * @param price null where the order has none
 * @param parties who sends, receives and pays
 * @param selling by which the price is shared out over customs lines
 */
public record Shipment(
        Bill bill,
        Workshop workshop,
        Shipping shipping,
        Route route,
        List<Crate> crates,
        List<Packed> tooLarge,
        List<OnHold> onHold,
        List<CustomsLine> customs,
        @Nullable SellingPrice price,
        Parties parties,
        SellingTerms selling) {

    public Order order() {
        return bill.order();
    }

    public BigDecimal netKg() {
        return crates.stream().map(Crate::netKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    public BigDecimal grossKg() {
        return crates.stream().map(Crate::grossKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Outer volume of all crates in litres. */
    public BigDecimal outerLitres() {
        return crates.stream().map(crate -> crate.type().outside().litres()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    public List<DangerousGoods> dangerous() {
        return DangerousGoods.of(crates);
    }

    /** Whether nobody has said by which way they go where no road leads. */
    boolean overseas() {
        return route.overseas(shipping);
    }

    /** Extras that are none of our crates' business. */
    public List<Extra> byCustomer() {
        return order().extra().stream().filter(Extra::suppliedByCustomer).toList();
    }

    /** What the workshop knows of that battery; of one that nobody has told of nothing is taken for granted. */
    ShippedBattery known(Goods goods) {
        Extra extra = goods.part() == null ? goods.extra() : null;
        if (extra != null && extra.goods() != null && extra.goods().battery() != null) {
            return extra.goods().battery();
        }
        PartNumber part =
                goods.part() == null ? ShippedBattery.NO_PART : goods.part().number();
        return shipping.batteries().getOrDefault(part, new ShippedBattery(part, false, false, "", null));
    }

    Findings findings(Consignment together) {
        return Stream.of(
                        CrateFindings.find(this),
                        DangerousFindings.find(this, together),
                        BatteryFindings.find(this),
                        BorderFindings.find(this),
                        AddressFindings.find(this))
                .flatMap(List::stream)
                .collect(Findings.collected());
    }
}
