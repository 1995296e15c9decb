package boltlore.cli;

import boltlore.book.db.Place;
import boltlore.book.stores.BarNeed;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which bars are short. */
@Command(
        name = "bars",
        description =
                "Say which bars must be bought for all owed orders that are not cut yet, by material and length, after what"
                        + " lies on the rack; bars that were bought lie there too ('rack add').")
final class StockBars extends FrozenCommand {

    @Mixin
    private Listing listing = new Listing();

    @Option(names = "--material", paramLabel = "NAME", description = "Only of that material.")
    private String material = "";

    @Option(names = "--short", description = "Only where a bar must be bought.")
    private boolean lacking;

    @Override
    Outcome<Integer> answer(Screen screen, Place place) {
        HeadStart.forSheets();
        return inStores(
                place,
                (book, catalogue) -> frozen(
                                book,
                                catalogue,
                                (reading, kits) -> kits.owed().then(owed -> BarNeed.of(reading, owed, catalogue)))
                        .then(needs -> listed(
                                screen,
                                listing,
                                needs.stream()
                                        .filter(need -> material.isEmpty()
                                                || need.material().equals(material))
                                        .filter(need ->
                                                !lacking || !need.toBuy().isEmpty())
                                        .toList(),
                                StockBars::json,
                                BarNeed::toString,
                                "No bar is to be cut.")));
    }

    private static JsonOut json(BarNeed need) {
        JsonOut.Members toBuy = JsonOut.object();
        need.toBuy().forEach((length, count) -> toBuy.put(plain(length), count));
        return JsonOut.object()
                .put("material", need.material())
                .put("pieces", need.pieces())
                .put("fromRack", need.fromRack())
                .put("toBuy", toBuy)
                .put("cost", need.cost())
                .put("currency", need.currency())
                .put("neededOn", need.neededOn().toString())
                .put("orders", JsonOut.texts(need.orders()));
    }
}
