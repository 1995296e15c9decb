package boltlore.cli;

import boltlore.asking.PapersLanguage;
import boltlore.catalogue.Catalogue;
import boltlore.choices.Choices;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.measure.OptionName;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The choices that a command speaks of: in a family, or those of an order file, with further ones written behind. */
final class AskedChoices {

    @Parameters(index = "0", paramLabel = "FAMILY", description = "A family, or an order file with choices in one.")
    private String family = "";

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "OPTION=VALUE",
            description = "Choices, in addition to those of the order file or instead of them.")
    private List<String> written = new ArrayList<>();

    @Option(
            names = "--fixed",
            paramLabel = "OPTION",
            description =
                    "An option whose choice stays as it is, whatever else has to change; may be given more than once.")
    private List<String> firm = new ArrayList<>();

    /** The order file that was given; null where a family was. */
    @Nullable
    Path file() {
        return family.endsWith(".json") ? Path.of(family) : null;
    }

    /** Options of the choices that were written behind, the last one first; those that are none are told elsewhere. */
    List<OptionName> newest() {
        List<OptionName> newest = new ArrayList<>();
        written.forEach(choice -> newest.add(0, new OptionName(choice.split("=", 2)[0])));
        return newest;
    }

    Outcome<Order> in(CatalogueSession session) {
        Outcome<Order> start =
                family.endsWith(".json") ? session.order(Path.of(family)) : inFamily(session.catalogue());
        return start.then(order -> WrittenChoices.added(order.choices(), written)
                .then(choices -> firm(order, choices, session.catalogue())));
    }

    private Outcome<Order> inFamily(Catalogue catalogue) {
        if (catalogue.families().containsKey(family)) {
            return Outcome.sound(Order.draft(Choices.of(catalogue.family(family), Map.of())));
        }
        String all = "There are: " + String.join(", ", catalogue.families().keySet());
        return Outcome.faulty(Fault.of(
                "",
                "family '" + family + "'",
                "a family of the catalogue",
                Nearest.advice(family, catalogue.families().keySet(), all)));
    }

    /** What is chosen now is no longer what the build date settled. */
    private Outcome<Order> firm(Order order, Choices choices, Catalogue catalogue) {
        TreeSet<OptionName> all = new TreeSet<>(order.firm());
        List<Fault> faults = new ArrayList<>();
        for (String name : firm) {
            Outcome<OptionName> option = WrittenChoices.option(choices.family(), name);
            faults.addAll(option.faults());
            if (option instanceof Outcome.Sound<OptionName> sound) {
                all.add(sound.value());
            }
        }
        TreeSet<OptionName> byDate = new TreeSet<>(order.settledByDate());
        byDate.removeIf(option -> !choices.value(option).equals(order.choices().value(option)));
        Order chosen = new OrderBuilder(order)
                .choices(choices)
                .settledByDate(byDate)
                .firm(all)
                .build();
        Order changed = new PapersLanguage(catalogue).following(order.choices(), choices, chosen);
        return faults.isEmpty() ? Outcome.sound(changed) : Outcome.faulty(faults);
    }
}
