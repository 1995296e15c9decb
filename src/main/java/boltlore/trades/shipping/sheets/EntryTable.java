package boltlore.trades.shipping.sheets;

import boltlore.catalogue.Consignor;
import boltlore.measure.Digits;
import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.shipping.By;
import boltlore.trades.shipping.DangerousGoods;
import boltlore.trades.shipping.Papers;
import boltlore.trades.shipping.Shipment;
import boltlore.trades.shipping.Told;
import boltlore.trades.shipping.UnNumber;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The entries of the road document in their order, as a draft. */
final class EntryTable {

    private EntryTable() {}

    static TableBuilder of(DangerousGoods goods, Shipment shipment) {
        TableBuilder table = Table.named(
                        "entries-" + goods.un().replace(" ", "").toLowerCase(Locale.ROOT))
                .columns(
                        Column.text("entry", "Entry, in this order").atMost(30),
                        Column.text("draft", "Draft").atMost(60),
                        Column.tick("checked", "Checked"));
        List<String> drafts = drafts(goods, shipment);
        for (int i = 0; i < drafts.size(); i++) {
            table.row().put("entry", Papers.ROAD_ENTRIES.get(i)).put("draft", drafts.get(i));
        }
        return table;
    }

    private static List<String> drafts(DangerousGoods goods, Shipment shipment) {
        UnNumber un = goods.entry().orElse(null);
        String order = shipment.order().partner().isEmpty()
                ? shipment.order().customer()
                : shipment.order().partner();
        return List.of(
                goods.un(),
                un == null ? "for the adviser" : un.properName(),
                un == null ? "for the adviser" : un.hazardClass() + " (label " + un.label() + ")",
                packages(goods),
                quantity(goods),
                consignor(shipment.shipping().consignor()),
                order + " – full address to be written in",
                un == null ? "for the adviser" : tunnel(un, shipment.route().by()));
    }

    private static String tunnel(UnNumber un, By by) {
        return by == By.ROAD ? un.tunnel() : un.tunnel() + ", where part of the way is by road";
    }

    private static String consignor(Consignor consignor) {
        return String.join(", ", consignor.address()) + ", " + consignor.country() + "; " + consignor.phone();
    }

    private static String packages(DangerousGoods goods) {
        String kinds = goods.crates().stream()
                .map(crate -> crate.type().says()
                        + (crate.type().unMark().isEmpty()
                                ? ""
                                : ", " + crate.type().unMark()))
                .distinct()
                .collect(Collectors.joining("; "));
        return goods.crates().size() + ": " + kinds;
    }

    private static String quantity(DangerousGoods goods) {
        String energy = goods.wattHours().signum() == 0 ? "" : ", " + Digits.upTo(goods.wattHours(), 0) + " Wh in all";
        String pieces = goods.pieces().compareTo(BigDecimal.ONE) == 0 ? " piece, " : " pieces, ";
        return Digits.upTo(goods.pieces(), 0) + pieces + Told.kg(goods.netKg()) + " net" + energy;
    }
}
