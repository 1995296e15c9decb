package boltlore.cli;

import boltlore.catalogue.Family;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.order.Order;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Which families there are, how much is to be chosen in each, and how many orders lie beside the catalogue. */
@Command(
        name = "families",
        description = "List the families, with the number of their options and of the orders beside the catalogue.")
final class FamiliesCommand extends RoomCommand {

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        return done(
                screen,
                CatalogueSession.of(catalogue)
                        .then(session -> orders(session)
                                .then(orders -> Outcome.sound(answer(
                                        screen,
                                        List.copyOf(
                                                session.catalogue().families().values()),
                                        orders)))));
    }

    private Outcome<Map<String, Integer>> orders(CatalogueSession session) {
        Path folder = catalogue.folder().resolve("orders");
        if (!Files.isDirectory(folder)) {
            return Outcome.sound(Map.of());
        }
        return OrderFiles.find(List.of(folder)).then(files -> {
            Map<String, Integer> orders = new TreeMap<>();
            for (Path file : files) {
                if (session.order(file) instanceof Outcome.Sound<Order> sound) {
                    orders.merge(sound.value().family(), 1, Integer::sum);
                }
            }
            return Outcome.sound(orders);
        });
    }

    private int answer(Screen screen, List<Family> families, Map<String, Integer> orders) {
        if (json()) {
            screen.line(JsonOut.list(
                            families,
                            family -> JsonOut.object()
                                    .put("family", family.name())
                                    .put("says", family.says().english())
                                    .put("options", family.options().size())
                                    .put("orders", orders.getOrDefault(family.name(), 0)))
                    .written()
                    .stripTrailing());
            return Exit.OK;
        }
        for (Family family : families) {
            int beside = orders.getOrDefault(family.name(), 0);
            screen.heading(family.name());
            screen.wrapped(
                    2,
                    family.says().english() + ": " + counted(family.options().size(), "option") + ", "
                            + counted(beside, "order") + " in "
                            + catalogue.folder().resolve("orders"));
        }
        return Exit.OK;
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
