package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.trades.cutting.Remnant;
import boltlore.trades.cutting.json.RemnantsReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which orders are cut together, and from which remnants. */
final class CutOrders {

    @Mixin
    private OrdersOption orders = new OrdersOption();

    @Option(
            names = "--remnants",
            paramLabel = "FILE",
            description = "Remnants at hand, which are used before new bars.")
    private @Nullable Path remnants;

    /** All of them resolved. What is wrong with any file, the remnants' too, is told together. */
    Outcome<CutKits> kits() {
        return orders.then((bench, files) -> {
            Outcome<KitsTogether> kits = KitsTogether.read(bench, files);
            Outcome<List<Remnant>> rack = rack(bench.catalogue());
            List<Fault> faults = new ArrayList<>(kits.faults());
            faults.addAll(rack.faults());
            return faults.isEmpty()
                    ? kits.then(all -> rack.then(remnants -> Outcome.sound(new CutKits(all, remnants))))
                    : Outcome.faulty(faults);
        });
    }

    private Outcome<List<Remnant>> rack(Catalogue known) {
        Path file = remnants;
        return file == null ? Outcome.sound(List.of()) : RemnantsReader.read(file, known);
    }
}
