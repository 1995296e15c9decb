package boltlore.explanation;

import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.measure.OptionName;
import boltlore.measure.Wording;
import boltlore.order.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Says the choices of an order as sentences, in a language. */
public final class ChoiceWords {

    /** What answers like '11 kW, three-phase' and 'Three-phase, 400 V, 16 A' are of: without it they say one thing twice. */
    private static final Map<Role, Wording> OF = Map.of(
            Role.CHARGER,
            new Wording(Map.of("en", "On-board charger: ", "de", "Ladegerät: ", "fr", "Chargeur embarqué\u00A0: ")),
            Role.SUPPLY,
            new Wording(Map.of("en", "Supply at home: ", "de", "Hausanschluss: ", "fr", "Branchement\u00A0: ")));

    private ChoiceWords() {}

    private static String of(Order order, OptionName name, String language) {
        return order.choices()
                .family()
                .option(name)
                .map(Option::role)
                .map(OF::get)
                .map(wording -> wording.in(language))
                .orElse("");
    }

    /** One sentence for each choice, in the family's order of options. */
    public static List<String> say(Order order, String language) {
        List<String> sentences = new ArrayList<>();
        for (Map.Entry<OptionName, String> choice : order.choices().values().entrySet()) {
            Optional<Option> option = order.choices().family().option(choice.getKey());
            String says = option.flatMap(known -> known.value(choice.getValue()))
                    .map(OptionValue::says)
                    .map(wording -> wording.in(language))
                    .orElse(choice.getValue());
            boolean byDate = order.settledByDate().contains(choice.getKey())
                    && option.filter(known -> known.scale() != null).isEmpty();
            says = of(order, choice.getKey(), language) + says;
            sentences.add(byDate ? says + ", by the build date " + order.donorBuilt() : says);
        }
        return sentences;
    }
}
