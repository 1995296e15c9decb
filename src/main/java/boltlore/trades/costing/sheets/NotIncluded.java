package boltlore.trades.costing.sheets;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.measure.OptionName;
import boltlore.report.PageBuilder;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a quotation does not include: what the workshop never does, and options of which the order takes the value that brings nothing, while others that the order might still have would bring
 * something. Which values bring something is read from the conditions of the kit's lines.
 */
final class NotIncluded {

    private final Family family;
    private final Choices choices;
    private final Map<OptionName, Set<String>> bring = new HashMap<>();

    private NotIncluded(Choices choices) {
        this.family = choices.family();
        this.choices = choices;
        family.lines().forEach(line -> collect(line.when()));
    }

    static void on(PageBuilder page, QuotedOrder quoted) {
        List<String> never = quoted.prices().stream()
                .flatMap(prices -> prices.excluded().stream())
                .map(says -> says.in(quoted.language()))
                .toList();
        if (!never.isEmpty()) {
            page.heading(quoted.phrases().say("notIncluded")).note("not-included", String.join(" ", never));
        }
        NotIncluded notTaken = new NotIncluded(quoted.bill().resolved().choices());
        List<String> options = notTaken.family.options().stream()
                .map(notTaken::offered)
                .filter(offered -> !offered.isEmpty())
                .map(offered -> words(offered, quoted.language()))
                .toList();
        if (!options.isEmpty()) {
            page.heading(quoted.phrases().say("notTaken")).note("not-chosen", String.join(". ", options) + ".");
        }
    }

    private static String words(List<OptionValue> values, String language) {
        return values.stream().map(value -> value.says().in(language)).collect(Collectors.joining(" / "));
    }

    private List<OptionValue> offered(Option option) {
        Set<String> bringing = bring.getOrDefault(option.name(), Set.of());
        String chosen = choices.value(option.name()).orElse("");
        return bringing.contains(chosen)
                ? List.of()
                : option.values().stream()
                        .filter(value -> bringing.contains(value.value()) && possible(option, value))
                        .toList();
    }

    /** Whether no limit speaks against that value beside the other choices as they are. */
    private boolean possible(Option option, OptionValue value) {
        Choices changed = choices.with(option.name(), value.value());
        return family.limits().stream().map(Limit::forbids).noneMatch(forbids -> Conditions.holds(forbids, changed));
    }

    private void collect(Condition condition) {
        if (condition instanceof Condition.Is is) {
            bring.computeIfAbsent(is.option(), any -> new HashSet<>()).addAll(is.values());
        } else if (condition instanceof Condition.All all) {
            all.conditions().forEach(this::collect);
        } else if (condition instanceof Condition.AnyOf any) {
            any.conditions().forEach(this::collect);
        }
    }
}
