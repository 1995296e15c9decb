package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which orders are coated together, for all commands that speak of one plan. */
final class CoatedOrders {

    @Parameters(arity = "1..*", paramLabel = "ORDER", description = "Order files, or folders of them.")
    private List<Path> orders = new ArrayList<>();

    @Option(
            names = "--late",
            paramLabel = "ORDER",
            description = "One more order file: say what it moves in the plan of the others, which stays as it is.")
    private @Nullable Path late;

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    /** All of them resolved; each order may be there once only. */
    Outcome<CoatedKits> kits() {
        return Bench.of(catalogue)
                .then(bench ->
                        OrderFiles.of(orders).then(files -> kits(bench, files)).then(kits -> with(bench, kits)));
    }

    private Outcome<CoatedKits> with(Bench bench, List<OrderKit> kits) {
        Path file = late;
        if (file == null) {
            return Outcome.sound(new CoatedKits(bench.catalogue(), kits, null));
        }
        return kits(bench, List.of(file)).then(lateKits -> {
            OrderKit kit = lateKits.get(0);
            return isAmong(kit, kits)
                    ? Outcome.faulty(again(file, kit, "Leave it out of the others, or give it without --late."))
                    : Outcome.sound(new CoatedKits(bench.catalogue(), kits, kit));
        });
    }

    private static boolean isAmong(OrderKit kit, List<OrderKit> kits) {
        return kits.stream()
                .anyMatch(other -> other.order().name().equals(kit.order().name()));
    }

    private static Outcome<List<OrderKit>> kits(Bench bench, List<Path> files) {
        List<OrderKit> kits = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (Path file : files) {
            Outcome<OrderKit> kit = bench.kit(file, false).then(read -> once(file, read, kits));
            faults.addAll(kit.faults());
            if (kit instanceof Outcome.Sound<OrderKit> sound) {
                kits.add(sound.value());
            }
        }
        return faults.isEmpty() ? Outcome.sound(kits) : Outcome.faulty(faults);
    }

    private static Outcome<OrderKit> once(Path file, OrderKit kit, List<OrderKit> before) {
        return isAmong(kit, before) ? Outcome.faulty(again(file, kit, "Give each order once.")) : Outcome.sound(kit);
    }

    private static Fault again(Path file, OrderKit kit, String advice) {
        String found = "order " + kit.order().name() + ", which is among the orders already";
        return Fault.of(file.toString(), found, "an order that is not there yet", advice);
    }
}
