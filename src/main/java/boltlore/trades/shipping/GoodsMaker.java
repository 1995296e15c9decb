package boltlore.trades.shipping;

import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Part;
import boltlore.catalogue.Transport;
import boltlore.order.Extra;
import boltlore.trades.picking.BagRow;
import boltlore.trades.picking.ExtraRow;
import boltlore.trades.picking.PickingList;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What is to be packed, from what stores hand out. */
final class GoodsMaker {

    private final Catalogue catalogue;

    private GoodsMaker(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Bags in fitting order, then extras; what the customer supplies is not ours to send. */
    static List<Goods> make(PickingList list, Catalogue catalogue) {
        GoodsMaker maker = new GoodsMaker(catalogue);
        List<Goods> goods = new ArrayList<>();
        list.bags().forEach(page -> page.rows().forEach(row -> goods.add(maker.ofBag(page.stage(), row))));
        list.extras().stream()
                .filter(row -> !row.extra().suppliedByCustomer())
                .forEach(row -> goods.add(maker.ofExtra(row)));
        return List.copyOf(goods);
    }

    /** One of a part, in no bag and of no order. */
    static Goods one(Part part, Catalogue catalogue) {
        return new GoodsMaker(catalogue).goods("", "", part, "", BigDecimal.ONE, BigDecimal.ZERO, null);
    }

    private Goods ofBag(String stage, BagRow row) {
        return goods(stage, row.bag(), row.part(), row.finish(), row.quantity(), row.spares(), null);
    }

    private Goods ofExtra(ExtraRow row) {
        Extra extra = row.extra();
        Part part = row.part();
        return part == null
                ? new Goods(
                        "",
                        "",
                        null,
                        "",
                        extra.quantity(),
                        BigDecimal.ZERO,
                        extra.massKg(),
                        null,
                        extra.goods() == null ? null : extra.goods().transport(),
                        extra)
                : goods("", "", part, extra.finish(), extra.quantity(), BigDecimal.ZERO, extra);
    }

    private Goods goods(
            String stage,
            String bag,
            Part part,
            String finish,
            BigDecimal quantity,
            BigDecimal spares,
            @Nullable Extra extra) {
        BigDecimal eachKg = Masses.eachKg(part, catalogue::part);
        return new Goods(stage, bag, part, finish, quantity, spares, eachKg, size(part), marking(part), extra);
    }

    /** As it was measured for packing, else what it takes up in the oven. */
    private @Nullable EnvelopeMm size(Part part) {
        EnvelopeMm measured = catalogue.shipping().sizes().get(part.number());
        return measured != null
                ? measured
                : part.coat() == null ? null : part.coat().envelope();
    }

    /** Its own, else the first of what it contains. */
    private @Nullable Transport marking(Part part) {
        return part.transport() != null
                ? part.transport()
                : part.contains().stream()
                        .map(Contained::part)
                        .map(catalogue::part)
                        .map(this::marking)
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(null);
    }
}
