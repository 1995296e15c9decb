package boltlore.trades.fixings;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Workshop;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.fixings.FixingsMaker.KitFixings;

/** Each bag's fixings with their spares, and what the scale must show. */
final class BagsPage {

    private static final int GRAMS = 3;

    private static final String RULE =
            "Count = net on the scale / mass of each, rounded; the net of the right count stands in the row. It is certain only where the mass of each is known"
                    + " within half a piece in the whole count (0.5 divided by the count). Where the part master's last digit is too coarse for that, weigh ten"
                    + " of the batch first ('ten first'), or count by hand. Spares: up to M8, and of self-locking nuts of any size, the larger of one and 5 % rounded up (workshop's own value).";

    private BagsPage() {}

    static PageBuilder compose(KitFixings fixings, Catalogue catalogue, String footer) {
        PageBuilder page = Page.named("Bags").footer(footer);
        page.title("Fixings by bag, counted by weight")
                .add(bags(fixings, catalogue))
                .note(RULE);
        return page.signatures("Counted by", "Second count by");
    }

    /** Bag by bag: what is weighed for one is weighed together. */
    private static TableBuilder bags(KitFixings fixings, Catalogue catalogue) {
        Workshop workshop = catalogue.workshop();
        TableSpec<BagCount> spec = spec(catalogue);
        TableBuilder table = spec.empty().inPairs();
        String last = "";
        for (BagCount bag : fixings.bags()) {
            String group = bag.stage() + "-" + bag.bag();
            if (!group.equals(last)) {
                String stage = workshop.stageSays(bag.stage(), workshop.language());
                table.group(
                        group, stage + " · " + catalogue.shipping().bagSays(bag.bag(), workshop, workshop.language()));
                last = group;
            }
            spec.add(table, "", bag);
        }
        return table;
    }

    private static TableSpec<BagCount> spec(Catalogue catalogue) {
        Workshop workshop = catalogue.workshop();
        return TableSpec.<BagCount>named("bags")
                .text("part", "Part", bag -> bag.part().number().text())
                .quantity("count", "Count", "", BagCount::count)
                .decimal("net", "Net", "g", 1, bag -> bag.netKg().movePointRight(GRAMS))
                .text("how", "By weight", 9, bag -> bag.sure() ? "yes" : "ten first")
                .box(Column.tick("weighed", "1st"))
                .box(Column.tick("counted", "2nd"))
                .besideThePaper()
                .text("stage", "Fit stage", 16, bag -> workshop.stageSays(bag.stage(), workshop.language()))
                .text("bag", "Bag", 22, bag -> catalogue.shipping().bagSays(bag.bag(), workshop, workshop.language()))
                .decimal("each", "Each", "g", 2, bag -> bag.eachKg().movePointRight(GRAMS))
                .decimal("tolerance", "Piece-weight tolerance", "%", 1, bag -> CountByWeight.surePercent(bag.count()))
                .said("name", "Name", 32, bag -> bag.part().name())
                .quantity("needed", "Needed", "", BagCount::quantity)
                .quantity("spares", "Spares", "", BagCount::spares);
    }
}
