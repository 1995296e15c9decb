package boltlore.choosing;

import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where choices stand: what may still be chosen, or that they contradict each other or the limits. */
public sealed interface ChoiceState {

    Choices choices();

    /**
     * Every open value can be completed to a valid order that keeps all choices.
     *
     * @param open values that may be chosen, those already chosen included
     */
    record Sound(Choices choices, Set<Choice> open) implements ChoiceState {

        public boolean isOpen(Choice choice) {
            return open.contains(choice);
        }

        /** Open values of the option, in the family's order. */
        public List<OptionValue> open(Option option) {
            return option.values().stream()
                    .filter(value -> isOpen(new Choice(option.name(), value.value())))
                    .toList();
        }

        /** Values of the option that cannot be chosen any more, in the family's order. */
        public List<OptionValue> closed(Option option) {
            return option.values().stream()
                    .filter(value -> !isOpen(new Choice(option.name(), value.value())))
                    .toList();
        }

        /** Options that are neither chosen nor forced. */
        public List<Option> questions() {
            return choices.unsettled().stream()
                    .filter(option -> open(option).size() > 1)
                    .toList();
        }

        /** The one value that is left of an option which is not chosen. */
        public Optional<OptionValue> forced(Option option) {
            List<OptionValue> left = open(option);
            return left.size() == 1 && choices.value(option.name()).isEmpty()
                    ? Optional.of(left.get(0))
                    : Optional.empty();
        }

        /** The choices with every forced value taken. */
        public Choices withForced() {
            Choices all = choices;
            for (Option option : choices.unsettled()) {
                OptionName name = option.name();
                Optional<OptionValue> forced = forced(option);
                all = forced.isPresent() ? all.with(name, forced.get().value()) : all;
            }
            return all;
        }
    }

    /** No valid order keeps all of these choices. */
    record Contradicted(Choices choices) implements ChoiceState {}
}
