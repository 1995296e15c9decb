package boltlore.trades.picking;

import boltlore.bill.Item;
import boltlore.measure.Wording;
import boltlore.report.Phrases;
import boltlore.report.TableSpec;

/** Parts of the vehicle itself that go back in and lie in no crate, with what to look at before they do. */
public final class ReusedTable {

    private ReusedTable() {}

    /**
     * With the words of a list that leaves the house.
     *
     * @param language of the names and of what to inspect
     * @param phrases for part, name, quantity, unit and inspect
     * @return a row a part of the vehicle, in the order of the parts given to it
     */
    public static TableSpec<Item> in(String language, Phrases phrases) {
        return TableSpec.<Item>named("reused")
                .text(
                        "part",
                        phrases.say("part"),
                        12,
                        item -> item.part().number().text())
                .text(
                        "name",
                        phrases.say("name"),
                        40,
                        item -> item.part().name().in(language))
                .quantity("quantity", phrases.say("quantity"), "", Item::quantity)
                .text(
                        "unit",
                        phrases.say("unit"),
                        8,
                        item -> phrases.unit(item.part().unit(), item.quantity()))
                .text("inspect", phrases.say("inspect"), 60, item -> {
                    Wording inspect = item.part().upkeep().inspect();
                    return inspect == null ? "" : inspect.in(language);
                });
    }
}
