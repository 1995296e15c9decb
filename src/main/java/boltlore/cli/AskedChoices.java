package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.choices.Choices;
import boltlore.choosing.Importance;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.measure.OptionName;
import boltlore.order.Order;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The choices that a command speaks of: in a family, or those of an order file, with further ones written behind. */
final class AskedChoices {

    /** Choices and what they mean to the customer. */
    record Given(Choices choices, Importance importance) {

        Family family() {
            return choices.family();
        }
    }

    @Parameters(index = "0", paramLabel = "FAMILY", description = "A family, or an order file with choices in one.")
    private String family = "";

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "OPTION=VALUE",
            description = "Choices, in addition to those of the order file or instead of them.")
    private List<String> written = new ArrayList<>();

    @Option(
            names = "--firm",
            paramLabel = "OPTION",
            description = "An option whose choice no repair may touch; may be given more than once.")
    private List<String> firm = new ArrayList<>();

    Outcome<Given> in(Bench bench) {
        Outcome<Given> start = family.endsWith(".json")
                ? bench.order(Path.of(family)).then(AskedChoices::ofOrder)
                : inFamily(bench.catalogue());
        return start.then(given -> WrittenChoices.added(given.choices(), written)
                .then(choices -> firm(choices, given.importance())
                        .then(importance -> Outcome.sound(new Given(choices, importance)))));
    }

    private static Outcome<Given> ofOrder(Order order) {
        return Outcome.sound(new Given(order.choices(), Importance.of(order)));
    }

    private Outcome<Given> inFamily(Catalogue catalogue) {
        if (catalogue.families().containsKey(family)) {
            Choices none = Choices.of(catalogue.family(family), Map.of());
            return Outcome.sound(new Given(none, Importance.NONE));
        }
        String all = "There are: " + String.join(", ", catalogue.families().keySet());
        return Outcome.faulty(Fault.of(
                "",
                "family '" + family + "'",
                "a family of the catalogue",
                Nearest.advice(family, catalogue.families().keySet(), all)));
    }

    private Outcome<Importance> firm(Choices choices, Importance before) {
        TreeSet<OptionName> all = new TreeSet<>(before.firm());
        List<Fault> faults = new ArrayList<>();
        for (String name : firm) {
            Outcome<OptionName> option = WrittenChoices.option(choices.family(), name);
            faults.addAll(option.faults());
            if (option instanceof Outcome.Sound<OptionName> sound) {
                all.add(sound.value());
            }
        }
        return faults.isEmpty() ? Outcome.sound(new Importance(all, before.rank())) : Outcome.faulty(faults);
    }
}
