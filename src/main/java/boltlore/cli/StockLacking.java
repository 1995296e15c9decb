package boltlore.cli;

import boltlore.book.db.Needs.Lacking;
import boltlore.book.db.Needs.Open;
import boltlore.book.db.Place;
import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is asked for and neither there nor ordered, at once for however many orders. */
@Command(
        name = "lacking",
        description =
                "Say at once what all owed orders ask of the stores in all that neither lies there nor is ordered; 'short'"
                        + " plans it day by day, with packs and by when to order.")
final class StockLacking extends BookCommand {

    private static final int MOST = 200;

    @Parameters(arity = "0..*", paramLabel = "PART", description = "Only these parts.")
    private List<String> parts = new ArrayList<>();

    @Option(names = "--most", paramLabel = "N", description = "At most so many, 200 without it.")
    private int most = MOST;

    @Option(names = "--for", description = "Say for whom, order by order.")
    private boolean forWhom;

    @Mixin
    private Listing listing = new Listing();

    @Override
    Outcome<Integer> answer(Screen screen, Place place) {
        return inBook(
                place,
                book -> book.read(reading -> {
                    List<Lacking> all = reading.needs().lacking(parts.isEmpty() ? most : Integer.MAX_VALUE).stream()
                            .filter(item -> parts.isEmpty() || parts.contains(item.part()))
                            .toList();
                    return listing.of(all, item -> json(reading, item)).then(asked -> told(screen, reading, asked));
                }));
    }

    private Outcome<Integer> told(Screen screen, Reading reading, List<Lacking> all) {
        answer(
                screen,
                all,
                items -> JsonOut.list(items, item -> json(reading, item)),
                items -> items.forEach(item -> told(screen, reading, item)));
        if (!json() && all.isEmpty()) {
            screen.wrapped(0, "Nothing is lacking.");
        }
        return Outcome.sound(Exit.OK);
    }

    private void told(Screen screen, Reading reading, Lacking item) {
        screen.wrapped(
                0,
                item.first() + ": " + FrozenCommand.plain(item.lacks()) + " lacking of "
                        + Stock.key(item.part(), item.finish()) + " (asked for "
                        + FrozenCommand.plain(item.needed()) + ", there " + FrozenCommand.plain(item.inStock())
                        + ", ordered " + FrozenCommand.plain(item.coming()) + ")");
        if (forWhom) {
            screen.wrapped(
                    2,
                    reading.needs().forWhom(item.part(), item.finish()).stream()
                            .map(open ->
                                    open.order() + " " + FrozenCommand.plain(open.quantity()) + " on " + open.day())
                            .collect(Collectors.joining(", ")));
        }
    }

    private JsonOut json(Reading reading, Lacking item) {
        JsonOut.Members json = JsonOut.object()
                .put("part", item.part())
                .put("finish", item.finish())
                .put("lacks", item.lacks())
                .put("needed", item.needed())
                .put("inStock", item.inStock())
                .put("coming", item.coming())
                .put("first", item.first().toString());
        return forWhom
                ? json.put("for", JsonOut.list(reading.needs().forWhom(item.part(), item.finish()), StockLacking::json))
                : json;
    }

    private static JsonOut json(Open open) {
        return JsonOut.object()
                .put("order", open.order())
                .put("day", open.day().toString())
                .put("quantity", open.quantity());
    }
}
