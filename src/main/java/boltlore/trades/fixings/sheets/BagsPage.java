package boltlore.trades.fixings.sheets;

import boltlore.catalogue.Workshop;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.fixings.BagCount;
import boltlore.trades.fixings.CountByWeight;
import boltlore.trades.fixings.KitFixings;

/** Each bag's fixings with their spares, and what the scale must show. */
final class BagsPage {

    private static final Column[] COLUMNS = {
        Column.text("stage", "Fit stage").atMost(16),
        Column.text("bag", "Bag").atMost(18),
        Column.text("part", "Part"),
        Column.text("name", "Name").atMost(32),
        Column.quantity("needed", "Needed"),
        Column.quantity("spares", "Spares"),
        Column.quantity("count", "In the bag"),
        Column.decimal("each", "Each", 2).in("g"),
        Column.decimal("net", "Net", 1).in("g"),
        Column.decimal("within", "Each true within", 1).in("%"),
        Column.text("how", "Count").atMost(20),
        Column.blank("gross", "Gross").in("g"),
        Column.blank("tare", "Tare").in("g"),
        Column.blank("counted", "Counted")
    };

    private static final String RULE =
            "Count = (gross − tare) / mass of each, rounded. It is sure only while the mass of each is"
                    + " true within one half divided by the count. Where the part master's last digit is too coarse for that, weigh ten"
                    + " of the batch first, or count by hand. Spares: up to M8 the larger of one and 5 % rounded up (workshop's own value).";

    private static final int GRAMS = 3;

    private BagsPage() {}

    static PageBuilder of(KitFixings fixings, Workshop workshop, String footer) {
        PageBuilder page = Page.named("Bags").landscape().footer(footer);
        page.title("Fixings by bag, counted by weight")
                .add(table(fixings, workshop))
                .note(RULE);
        return page.signatures("Counted by", "Second count by");
    }

    private static TableBuilder table(KitFixings fixings, Workshop workshop) {
        TableBuilder table = Table.named("bags").columns(COLUMNS);
        fixings.bags().forEach(bag -> fill(table.row(), bag, workshop));
        return table;
    }

    private static void fill(RowBuilder row, BagCount bag, Workshop workshop) {
        row.put("stage", workshop.stageSays(bag.stage(), "en"))
                .put("bag", bag.bag())
                .put("part", bag.part().number().text())
                .put("name", bag.part().name().english())
                .put("needed", bag.quantity())
                .put("spares", bag.spares())
                .put("count", bag.count());
        scale(row, bag);
    }

    private static void scale(RowBuilder row, BagCount bag) {
        row.put("each", bag.eachKg().movePointRight(GRAMS))
                .put("net", bag.netKg().movePointRight(GRAMS))
                .put("within", CountByWeight.surePercent(bag.count()))
                .put("how", bag.sure() ? "by weight" : "weigh ten first");
    }
}
