package boltlore.choosing;

import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.measure.Wording;
import java.util.List;
import java.util.stream.Collectors;

/** Says conflicts as sentences: what was chosen, and the limits in their own words. */
public final class ConflictWords {

    private final Family family;

    public ConflictWords(Family family) {
        this.family = family;
    }

    /** 'Left-hand drive', or the value's name where it is not known. */
    public String says(Choice choice) {
        return family.option(choice.option())
                .flatMap(option -> option.value(choice.value()))
                .map(OptionValue::says)
                .map(Wording::english)
                .orElse(choice.value());
    }

    /** Why a value cannot be chosen: 'J3400: not available, because Europe is chosen. The J3400 inlet is …' */
    public String closed(Choice wanted, Conflict conflict) {
        if (conflict.choices().isEmpty()) {
            return sentence(says(wanted) + ": not available in any order", conflict.limits());
        }
        String because = ": not available, because " + chosen(conflict.choices());
        return sentence(says(wanted) + because, conflict.limits());
    }

    /** Why a value is the only one left. */
    public String forced(Choice left, Conflict conflict) {
        return conflict.choices().isEmpty()
                ? sentence(says(left) + ", as in every order", conflict.limits())
                : sentence(says(left) + ", because " + chosen(conflict.choices()), conflict.limits());
    }

    /** Why choices do not stand together. */
    public String contradiction(Conflict conflict) {
        List<Choice> choices = conflict.choices();
        String what = choices.isEmpty()
                ? "No order of this family is valid"
                : choices.size() == 1
                        ? says(choices.get(0)) + " is not available in any order"
                        : names(choices) + " cannot be combined";
        return sentence(what, conflict.limits());
    }

    /** Why something cannot be: 'X and Y never ship together, because Europe is chosen. …' */
    public String never(String what, Conflict conflict) {
        return conflict.choices().isEmpty()
                ? sentence(what, conflict.limits())
                : sentence(what + ", because " + chosen(conflict.choices()), conflict.limits());
    }

    private String chosen(List<Choice> choices) {
        return names(choices) + (choices.size() == 1 ? " is chosen" : " are chosen");
    }

    /** 'A', 'A and B', 'A, B and C'. */
    private String names(List<Choice> choices) {
        List<String> says = choices.stream().map(this::says).toList();
        int last = says.size() - 1;
        return last == 0 ? says.get(0) : String.join(", ", says.subList(0, last)) + " and " + says.get(last);
    }

    private static String sentence(String what, List<Limit> limits) {
        String reasons = limits.stream().map(Limit::because).collect(Collectors.joining(" "));
        return reasons.isEmpty() ? what + "." : what + ". " + reasons;
    }
}
