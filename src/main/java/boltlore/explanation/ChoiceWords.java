package boltlore.explanation;

import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.measure.OptionName;
import boltlore.order.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Says the choices of an order as sentences, in a language. */
public final class ChoiceWords {

    private ChoiceWords() {}

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
            sentences.add(byDate ? says + ", by the build date " + order.donorBuilt() : says);
        }
        return sentences;
    }
}
