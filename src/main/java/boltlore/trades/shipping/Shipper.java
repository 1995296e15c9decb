package boltlore.trades.shipping;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.SellingTerms;
import boltlore.catalogue.Shipping;
import boltlore.catalogue.Stage;
import boltlore.catalogue.Workshop;
import boltlore.trades.Parties;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.picking.PickingList;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Packs one kit into crates by fit stage and works out what its papers say. */
public final class Shipper {

    private final Workshop workshop;
    private final Shipping shipping;
    private final CrateCapacity capacity;

    private Shipper(Catalogue catalogue) {
        this.workshop = catalogue.workshop();
        this.shipping = catalogue.shipping();
        this.capacity = new CrateCapacity(shipping);
    }

    /**
     * One order's kit in its crates.
     *
     * @param price that the customer pays; null where the order has none
     * @param list what stores hand out of the same bill
     */
    public static Shipment ship(CostedBill costed, @Nullable SellingPrice price, PickingList list, Route route) {
        return new Shipper(costed.catalogue()).shipment(costed, price, list, route);
    }

    private Shipment shipment(CostedBill costed, @Nullable SellingPrice price, PickingList list, Route route) {
        List<Goods> goods = GoodsMaker.make(list, costed.catalogue());
        List<Crate> crates = new ArrayList<>();
        List<Packed> tooLarge = new ArrayList<>();
        loads(goods).forEach((load, all) -> pack(load, all, crates, tooLarge));
        PriceBook prices = costed.catalogue().prices();
        SellingTerms selling = prices == null ? SellingTerms.NONE : prices.selling();
        Parties parties = Parties.of(costed.bill().order(), costed.catalogue());
        return new Shipment(
                costed.bill(),
                workshop,
                shipping,
                parties.consignee()
                        .map(consignee -> route.orElseTo(consignee.country()))
                        .orElse(route),
                crates,
                tooLarge,
                list.onHold(),
                CustomsMaker.make(goods, price, selling),
                price,
                parties,
                selling);
    }

    private void pack(Load load, List<Goods> goods, List<Crate> crates, List<Packed> tooLarge) {
        CratePacker.Result result = CratePacker.pack(capacity, load, goods);
        result.crates().forEach(filled -> crates.add(crate(crates.size() + 1, load, filled)));
        tooLarge.addAll(result.tooLarge());
    }

    private SortedMap<Load, List<Goods>> loads(List<Goods> goods) {
        List<String> stages = workshop.stages().stream().map(Stage::name).toList();
        SortedMap<Load, List<Goods>> loads = new TreeMap<>(Load.order(stages));
        goods.forEach(each ->
                loads.computeIfAbsent(load(each), load -> new ArrayList<>()).add(each));
        return loads;
    }

    /** Dangerous goods always apart; then bags that are crates of their own; then the fit stage. */
    private Load load(Goods goods) {
        String un = goods.transport() == null ? "" : goods.transport().un();
        String own = shipping.ownCrate(goods.bag()).isPresent() ? goods.bag() : "";
        boolean together =
                shipping.ownCrate(goods.bag()).filter(each -> each.together()).isPresent();
        return new Load(together ? "" : goods.stage(), own, un, goods.extra() != null);
    }

    private Crate crate(int number, Load load, CratePacker.Filled filled) {
        BigDecimal all = filled.packed().stream().map(capacity::litres).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal guessed = filled.packed().stream()
                .filter(packed -> packed.goods().size() == null)
                .map(capacity::litres)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return new Crate(number, load, filled.type(), filled.packed(), all, guessed);
    }
}
