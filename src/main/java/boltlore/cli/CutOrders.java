package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.catalogue.Catalogue;
import boltlore.cutting.Remnant;
import boltlore.cutting.json.RemnantsReader;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which orders are cut together, and from which remnants. */
final class CutOrders {

    @Parameters(arity = "1..*", paramLabel = "ORDER", description = "Order files, or folders of them.")
    private List<Path> orders = new ArrayList<>();

    @Option(
            names = "--remnants",
            paramLabel = "FILE",
            description = "Remnants at hand, which are used before new bars.")
    private @Nullable Path remnants;

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    /** All of them resolved; each order may be there once only. What is wrong with any file is told together. */
    Outcome<CutKits> kits() {
        return Bench.of(catalogue).then(bench -> OrderFiles.of(orders).then(files -> kits(bench, files)));
    }

    private Outcome<CutKits> kits(Bench bench, List<Path> files) {
        List<Fault> faults = new ArrayList<>();
        List<OrderKit> kits = new ArrayList<>();
        for (Path file : files) {
            add(file, bench.kit(file, false), kits, faults);
        }
        Outcome<List<Remnant>> rack = rack(bench.catalogue());
        faults.addAll(rack.faults());
        return faults.isEmpty()
                ? rack.then(all -> Outcome.sound(new CutKits(bench.catalogue(), kits, all)))
                : Outcome.faulty(faults);
    }

    private static void add(Path file, Outcome<OrderKit> read, List<OrderKit> kits, List<Fault> faults) {
        faults.addAll(read.faults());
        if (read instanceof Outcome.Sound<OrderKit> sound) {
            String name = sound.value().order().name();
            if (kits.stream().anyMatch(kit -> kit.order().name().equals(name))) {
                String found = "order " + name + ", which is among the orders already";
                faults.add(Fault.of(file.toString(), found, "an order that is not there yet", "Give each order once."));
            }
            kits.add(sound.value());
        }
    }

    private Outcome<List<Remnant>> rack(Catalogue known) {
        Path file = remnants;
        return file == null ? Outcome.sound(List.of()) : RemnantsReader.read(file, known);
    }
}
