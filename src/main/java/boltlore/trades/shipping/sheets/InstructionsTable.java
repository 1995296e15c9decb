package boltlore.trades.shipping.sheets;

import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.shipping.Batteries;
import boltlore.trades.shipping.Crate;
import boltlore.trades.shipping.DangerousGoods;
import boltlore.trades.shipping.Packed;
import boltlore.trades.shipping.PackingInstruction;
import boltlore.trades.shipping.Shipment;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/** Packing instructions that a trained person chooses from. */
final class InstructionsTable {

    private static final Column[] COLUMNS = {
        Column.text("code", "Packing instruction").atMost(24),
        Column.text("says", "For").atMost(66),
        Column.tick("chosen", "Chosen")
    };

    private InstructionsTable() {}

    static TableBuilder of(DangerousGoods goods, Shipment shipment) {
        TableBuilder table = Table.named("instructions").columns(COLUMNS);
        Stream.concat(
                        goods.crates().stream().flatMap(crate -> toConsider(crate, shipment).stream()),
                        Stream.of(PackingInstruction.DAMAGED))
                .distinct()
                .sorted()
                .forEach(each -> table.row().put("code", each.code()).put("says", each.says()));
        return table;
    }

    private static List<PackingInstruction> toConsider(Crate crate, Shipment shipment) {
        BigDecimal pieces = crate.packed().stream().map(Packed::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        return crate.packed().stream()
                .map(Packed::goods)
                .flatMap(
                        goods -> PackingInstruction.toConsider(
                                goods.kg(BigDecimal.ONE), pieces, Batteries.known(shipment.shipping(), goods))
                                .stream())
                .toList();
    }
}
