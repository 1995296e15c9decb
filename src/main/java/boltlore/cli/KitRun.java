package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.bill.Bill;
import boltlore.exports.Exports;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.resolution.FamilyPlan;
import boltlore.sheets.orders.OrderSheets;
import boltlore.sheets.orders.SheetFormats;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Resolves many order files, several at once, and writes the sheets of those that nothing stops. */
final class KitRun {

    private final Bench bench;
    private final Path out;
    private final boolean takeUsual;
    private final Progress progress;

    KitRun(Bench bench, Path out, boolean takeUsual, Progress progress) {
        this.bench = bench;
        this.out = out;
        this.takeUsual = takeUsual;
        this.progress = progress;
    }

    /** What became of each file, in the order given. */
    List<Finished> of(List<Path> files) {
        Map<Path, Outcome<OrderKit>> kits = new HashMap<>();
        files.forEach(file -> kits.put(file, bench.kit(file, takeUsual)));
        Map<String, Path> names = new HashMap<>();
        kits.forEach((file, outcome) -> {
            if (outcome instanceof Outcome.Sound<OrderKit> sound) {
                names.merge(sound.value().order().name(), file, (one, other) -> one.compareTo(other) < 0 ? one : other);
            }
        });
        List<Finished> all = files.parallelStream()
                .map(file -> finish(file, Objects.requireNonNull(kits.get(file)), names))
                .toList();
        progress.end();
        return all;
    }

    private Finished finish(Path file, Outcome<OrderKit> outcome, Map<String, Path> names) {
        Finished finished = outcome instanceof Outcome.Sound<OrderKit> sound
                ? sheets(file, sound.value(), names)
                : Finished.refused(file, outcome.faults(), Exit.FAULTS);
        progress.oneMore();
        return finished;
    }

    private Finished sheets(Path file, OrderKit kit, Map<String, Path> names) {
        Path first = names.getOrDefault(kit.order().name(), file);
        if (!first.equals(file)) {
            String found = "order '" + kit.order().name() + "', which is also in " + first;
            return Finished.refused(
                    file,
                    List.of(Fault.of(file.toString(), found, "one file for each order", "Give one of them alone")),
                    Exit.FAULTS);
        }
        Bill bill = kit.bill();
        if (bill == null || !kit.issuesSheets()) {
            return new Finished(file, kit, List.of(), List.of(), Exit.STOPPED);
        }
        FamilyPlan plan = bench.resolver().resolver().plan(kit.order().family());
        Outcome<List<Path>> written =
                Exports.write(out.resolve(kit.order().name()), SheetFormats.of(OrderSheets.of(plan, bill)));
        return written instanceof Outcome.Sound<List<Path>> paths
                ? new Finished(file, kit, paths.value(), List.of(), Exit.OK)
                : new Finished(file, kit, List.of(), written.faults(), Exit.NOT_WRITTEN);
    }
}
