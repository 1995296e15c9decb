package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.book.By;
import boltlore.book.Entry;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.orders.Bench;
import boltlore.book.orders.FrozenKit;
import boltlore.book.orders.OrderDesk;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes the sheets of an order as it was frozen. */
@Command(
        name = "sheets",
        description =
                "Write the sheets of a quoted or confirmed order from the catalogue as it was, and keep the hash of"
                        + " each.")
final class OrderSheetsWritten extends BookCommand {

    @Mixin
    private OrderCommand.Numbered order = new OrderCommand.Numbered();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the order's folder is written; without it the folder 'exports' here.")
    private Path out = Path.of("exports");

    @Option(names = "--all", description = "Write the sheets for the other trades too.")
    private boolean all;

    @Override
    Outcome<Integer> answer(Screen screen, Place place) {
        HeadStart.forSheets();
        return order.read()
                .then(name -> by().then(by -> inBook(
                        place,
                        book -> FrozenKit.with(book, name, (bench, kit) -> sheets(screen, book, by, bench, kit)))));
    }

    private Outcome<Integer> sheets(Screen screen, Book book, By by, Bench bench, OrderKit kit) {
        List<Path> written = new ArrayList<>();
        OrderOutcome outcome = new KitRun(
                        new CatalogueSession(bench.catalogue(), bench.resolver()),
                        out,
                        false,
                        all,
                        false,
                        false,
                        result -> {
                            written.addAll(result.written());
                            return json() ? KitCommand.json(result) + "\n" : KitCommand.text(result);
                        },
                        this::writeSets)
                .ofResolved(kit);
        screen.text(outcome.answer());
        if (!outcome.faults().isEmpty()) {
            return Outcome.faulty(outcome.faults());
        }
        String name = kit.order().name();
        return hashes(out.resolve(name), written)
                .then(sheets -> new OrderDesk(book, by).issue(name, sheets))
                .then(issued -> Outcome.sound(outcome.exit()));
    }

    private static Outcome<SortedMap<String, String>> hashes(Path folder, List<Path> written) {
        SortedMap<String, String> hashes = new TreeMap<>();
        for (Path file : written) {
            try {
                hashes.put(
                        folder.relativize(file).toString().replace('\\', '/'), Entry.sha256(Files.readAllBytes(file)));
            } catch (IOException e) {
                return Outcome.faulty(Fault.of(
                        file.toString(), "a sheet that is gone already", "the sheet as written", "Try again."));
            }
        }
        return Outcome.sound(hashes);
    }
}
