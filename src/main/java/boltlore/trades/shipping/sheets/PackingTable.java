package boltlore.trades.shipping.sheets;

import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.shipping.Crate;
import boltlore.trades.shipping.Goods;
import boltlore.trades.shipping.Packed;
import boltlore.trades.shipping.Shipment;
import java.util.Map;

/** What lies in which crate, in the order's language and without any price. */
record PackingTable(Shipment shipment, Map<String, Finish> finishes, LoadWords words) {

    TableBuilder table() {
        TableBuilder table = Table.named("packing");
        columns(table);
        shipment.crates().forEach(crate -> crate(table, crate));
        table.total("total", say("total")).sumOfSubtotals("mass", shipment.netKg());
        return table;
    }

    private String say(String name) {
        return words.phrases().say(name);
    }

    private void columns(TableBuilder table) {
        table.columns(
                Column.text("part", say("part")).atMost(16),
                Column.text("name", say("name")).atMost(34),
                Column.text("finish", say("finish")).atMost(16),
                Column.text("bag", say("bag")).atMost(20),
                Column.quantity("quantity", say("quantity")),
                Column.text("unit", say("unit")).atMost(8),
                Column.decimal("mass", say("mass"), 2).in("kg"),
                Column.tick("checked", say("checked")));
    }

    private void crate(TableBuilder table, Crate crate) {
        table.group("crate-" + crate.number(), heading(crate));
        crate.packed().forEach(packed -> fill(table.row(), packed));
        table.subtotal(say("net")).sum("mass", crate.netKg());
    }

    /** Number, content, outer size and gross mass. */
    private String heading(Crate crate) {
        return say("crate") + " " + crate.number() + " " + say("of") + " "
                + shipment.crates().size() + " · " + words.of(crate.load()) + " · " + LoadWords.outside(crate)
                + " mm · "
                + say("grossWord") + " " + words.kg(crate.grossKg());
    }

    private void fill(RowBuilder row, Packed packed) {
        Goods goods = packed.goods();
        Part part = goods.part();
        row.put("part", part == null ? "" : part.number().text())
                .put("name", part == null ? goods.name() : part.name().in(words.language()))
                .put("finish", finish(goods.finish()))
                .put("bag", words.bag(goods.bag()))
                .put("quantity", packed.quantity())
                .put("unit", words.phrases().unit(goods.unit(), packed.quantity()));
        if (goods.eachKg() != null) {
            row.put("mass", packed.kg());
        }
    }

    private String finish(String name) {
        Finish finish = finishes.get(name);
        return finish == null ? name : finish.says().in(words.language());
    }
}
