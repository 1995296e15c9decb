package boltlore.trades.bill.sheets;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Tracked;
import boltlore.report.Column;
import boltlore.report.Phrases;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.picking.BagPage;
import boltlore.trades.picking.BagRow;
import boltlore.trades.picking.ExtraRow;
import boltlore.trades.picking.OnHold;
import java.math.BigDecimal;
import java.util.List;

/** What is in the kit, by fit stage and bag, and the extras. */
final class ContentsTables {

    private final Catalogue catalogue;
    private final String language;
    private final Phrases phrases;

    ContentsTables(Catalogue catalogue, String language, Phrases phrases) {
        this.catalogue = catalogue;
        this.language = language;
        this.phrases = phrases;
    }

    TableBuilder parts(List<BagPage> bags) {
        TableBuilder table = Table.named("contents");
        columns(table);
        for (BagPage page : bags) {
            table.group(page.stage(), catalogue.workshop().stageSays(page.stage(), language));
            page.rows().forEach(row -> fill(table.row(), row));
        }
        return table;
    }

    private void columns(TableBuilder table) {
        table.columns(
                Column.text("bag", phrases.say("bag")).atMost(20),
                Column.text("part", phrases.say("part")).atMost(12),
                Column.text("revision", phrases.say("rev")).atMost(5),
                Column.text("name", phrases.say("name")).atMost(40),
                Column.text("finish", phrases.say("finish")).atMost(24),
                Column.quantity("quantity", phrases.say("quantity")),
                Column.quantity("spares", phrases.say("spares")),
                Column.text("unit", phrases.say("unit")).atMost(8),
                Column.blank("tracked", phrases.say("tracked")).atMost(18),
                Column.tick("checked", phrases.say("checked")));
    }

    TableBuilder undecided(List<OnHold> onHold) {
        TableBuilder table = Table.named("undecided")
                .columns(
                        Column.text("part", phrases.say("part")),
                        Column.text("name", phrases.say("name")).atMost(60),
                        Column.text("finish", phrases.say("finish")).atMost(24),
                        Column.quantity("quantity", phrases.say("quantity")),
                        Column.text("unit", phrases.say("unit")));
        onHold.forEach(held -> part(table.row(), held.part(), held.finish(), held.quantity()));
        return table;
    }

    private RowBuilder part(RowBuilder row, Part part, String finish, BigDecimal quantity) {
        return row.put("part", part.number().text())
                .put("name", part.name().in(language))
                .put("finish", catalogue.finishSays(finish, language))
                .put("quantity", quantity)
                .put("unit", phrases.unit(part.unit(), quantity));
    }

    TableBuilder extras(List<ExtraRow> extras) {
        TableBuilder table = Table.named("extras")
                .columns(
                        Column.text("extra", phrases.say("extra")).atMost(60),
                        Column.quantity("quantity", phrases.say("quantity")),
                        Column.text("unit", phrases.say("unit")),
                        Column.text("supplied-by", phrases.say("suppliedBy")),
                        Column.tick("checked", phrases.say("checked")));
        extras.forEach(row -> table.row()
                .put("extra", says(row))
                .put("quantity", row.extra().quantity())
                .put("unit", phrases.unit(row.extra().unit(), row.extra().quantity()))
                .put("supplied-by", phrases.say(row.extra().suppliedByCustomer() ? "customerSupplies" : "us")));
        return table;
    }

    private void fill(RowBuilder row, BagRow of) {
        Part part = of.part();
        part(row, part, of.finish(), of.quantity())
                .put(
                        "bag",
                        of.bag().isEmpty()
                                ? phrases.say("loose")
                                : catalogue.shipping().bagSays(of.bag(), catalogue.workshop(), language))
                .put("revision", part.revision())
                .code("bag-id", of.bag())
                .code("finish-id", of.finish());
        if (of.spares().signum() > 0) {
            row.put("spares", of.spares());
        }
        if (part.tracked() != null) {
            row.put("tracked", phrases.say(part.tracked() == Tracked.SERIAL ? "serial" : "lot"));
        }
    }

    private String says(ExtraRow row) {
        Part part = row.part();
        return part == null
                ? row.extra().says()
                : part.number() + " " + part.name().in(language);
    }
}
