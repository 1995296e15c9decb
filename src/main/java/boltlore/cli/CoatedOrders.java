package boltlore.cli;

import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which orders are coated together, for all commands that speak of one plan. */
final class CoatedOrders {

    @Mixin
    private OrdersOption orders = new OrdersOption();

    @Option(
            names = "--late",
            paramLabel = "ORDER",
            description = "One more order file: say what it moves in the plan of the others, which stays as it is.")
    private @Nullable Path late;

    /** All of them resolved, the late one too. */
    Outcome<CoatedKits> kits() {
        return orders.then((bench, files) -> KitsTogether.read(bench, files).then(planned -> with(bench, planned)));
    }

    private Outcome<CoatedKits> with(Bench bench, KitsTogether planned) {
        Path file = late;
        if (file == null) {
            return Outcome.sound(new CoatedKits(planned, null));
        }
        return KitsTogether.read(bench, List.of(file))
                .then(one ->
                        planned.once(file, one.kits().get(0), "Leave it out of the others, or give it without --late."))
                .then(kit -> Outcome.sound(new CoatedKits(planned, kit)));
    }
}
