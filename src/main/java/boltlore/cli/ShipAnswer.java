package boltlore.cli;

import boltlore.catalogue.EnvelopeMm;
import boltlore.json.JsonOut;
import boltlore.measure.Digits;
import boltlore.trades.shipping.Consignment;
import boltlore.trades.shipping.Crate;
import boltlore.trades.shipping.CustomsLine;
import boltlore.trades.shipping.DangerousGoods;
import boltlore.trades.shipping.Lift;
import boltlore.trades.shipping.Packed;
import boltlore.trades.shipping.SellingPrice;
import boltlore.trades.shipping.ShipFinding;
import boltlore.trades.shipping.ShipFindings;
import boltlore.trades.shipping.Shipment;
import boltlore.trades.shipping.sheets.ShipSheet;
import boltlore.trades.shipping.sheets.ShipWords;
import java.nio.file.Path;
import java.util.List;

/** Shipments for programs: kg with three decimals at most, values in the quotation's currency, no cost. */
final class ShipAnswer {

    private ShipAnswer() {}

    static String json(List<ShippedOrder> shipped, List<Path> written) {
        Consignment together = shipped.get(0).together();
        return JsonOut.object()
                .put("written", JsonOut.texts(written))
                .put("roadPoints", Digits.thousandths(together.points().points()))
                .put("orders", JsonOut.list(shipped, each -> order(each.shipment(), together)))
                .written()
                .stripTrailing();
    }

    private static JsonOut order(Shipment shipment, Consignment together) {
        JsonOut.Members answer = JsonOut.object()
                .put("order", shipment.order().name())
                .put("by", shipment.route().by())
                .put("to", JsonOut.texts(shipment.route().to()))
                .put("netKg", Digits.thousandths(shipment.netKg()))
                .put("grossKg", Digits.thousandths(shipment.grossKg()))
                .put("crates", JsonOut.list(shipment.crates(), crate -> crate(shipment, crate)));
        return papers(answer, shipment)
                .put("stops", ShipFindings.stop(shipment, together))
                .put("findings", JsonOut.list(ShipFindings.of(shipment, together), ShipAnswer::finding));
    }

    private static JsonOut.Members papers(JsonOut.Members answer, Shipment shipment) {
        SellingPrice price = shipment.price();
        if (price != null) {
            answer.put("currency", price.currency().getCurrencyCode()).put("price", price.total());
        }
        return answer.put("customs", JsonOut.list(shipment.customs(), ShipAnswer::customs))
                .put("dangerous", JsonOut.list(shipment.dangerous(), ShipAnswer::dangerous))
                .putIfAny("drawing", shipment.crates().isEmpty() ? "" : ShipSheet.crates(shipment));
    }

    private static JsonOut crate(Shipment shipment, Crate crate) {
        JsonOut.Members answer = JsonOut.object()
                .put("crate", crate.number())
                .put("kind", crate.type().name())
                .put("content", ShipWords.content(shipment, crate))
                .put("stages", JsonOut.texts(crate.stages()))
                .putIfAny("un", crate.load().un());
        return size(answer, crate.type().outside())
                .put("netKg", Digits.thousandths(crate.netKg()))
                .put("grossKg", Digits.thousandths(crate.grossKg()))
                .put("litres", Digits.thousandths(crate.litres()))
                .put("litresByMass", Digits.thousandths(crate.guessedLitres()))
                .put("lift", Lift.of(crate.grossKg(), shipment.shipping().lifting()))
                .put("packed", JsonOut.list(crate.packed(), ShipAnswer::packed));
    }

    private static JsonOut.Members size(JsonOut.Members answer, EnvelopeMm size) {
        return answer.put("lengthMm", size.length())
                .put("widthMm", size.width())
                .put("heightMm", size.height());
    }

    private static JsonOut packed(Packed packed) {
        JsonOut.Members answer = JsonOut.object()
                .put(
                        packed.goods().part() == null ? "oneOff" : "part",
                        packed.goods().name())
                .putIfAny("finish", packed.goods().finish())
                .putIfAny("bag", packed.goods().bag())
                .put("quantity", packed.quantity())
                .put("unit", packed.goods().unit());
        return packed.goods().eachKg() == null ? answer : answer.put("kg", Digits.thousandths(packed.kg()));
    }

    private static JsonOut customs(CustomsLine line) {
        return JsonOut.object()
                .putIfAny("hs", line.hs())
                .putIfAny("origin", line.origin())
                .put("pieces", line.pieces())
                .put("measured", JsonOut.texts(line.measured()))
                .put("netKg", Digits.thousandths(line.netKg()))
                .putIfAny("value", line.value());
    }

    private static JsonOut dangerous(DangerousGoods goods) {
        return JsonOut.object()
                .put("un", goods.un())
                .put("pieces", goods.pieces())
                .put("netKg", Digits.thousandths(goods.netKg()))
                .put("wattHours", goods.wattHours());
    }

    private static JsonOut finding(ShipFinding finding) {
        return JsonOut.object()
                .put("about", finding.about())
                .put("says", finding.says())
                .put("stops", finding.stops());
    }
}
