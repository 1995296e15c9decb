package boltlore.sheets.shipping;

import boltlore.sheets.Column;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import boltlore.shipping.Batteries;
import boltlore.shipping.Crate;
import boltlore.shipping.DangerousGoods;
import boltlore.shipping.Packed;
import boltlore.shipping.PackingInstruction;
import boltlore.shipping.Shipment;
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
