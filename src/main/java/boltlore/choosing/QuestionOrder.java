package boltlore.choosing;

import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.choices.Choice;
import boltlore.choices.Mentions;
import boltlore.measure.OptionName;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which question to ask next: of the vehicle first, then the one whose answer, whichever it is, closes most values elsewhere. Where there are too
 * many questions to try them all, the one that most limits speak of.
 */
public final class QuestionOrder {

    /** So many answers are tried out for one question. */
    private static final int MOST_TRIED = 200;

    private final Chooser chooser;
    private final Map<OptionName, Integer> spokenOf = new HashMap<>();

    public QuestionOrder(Chooser chooser) {
        this.chooser = chooser;
        for (Limit limit : chooser.family().limits()) {
            Mentions.find(limit.forbids()).forEach(option -> spokenOf.merge(option, 1, Integer::sum));
        }
    }

    /** Which of these questions; empty where there is none. Of equal ones the first. */
    public Optional<Option> next(ChoiceState.Sound standing, List<Option> questions) {
        int answers = questions.stream()
                .mapToInt(option -> standing.open(option).size())
                .sum();
        Map<OptionName, Double> settles = new HashMap<>();
        for (Option option : questions) {
            settles.put(option.name(), settles(standing, option, answers <= MOST_TRIED));
        }
        return questions.stream()
                .min(Comparator.<Option>comparingInt(QuestionOrder::vehicleFirst)
                        .thenComparingDouble(option -> -settles.getOrDefault(option.name(), 0.0)));
    }

    /** A talk begins with the vehicle: when it was built, where its driver sits, and where it is driven. */
    private static int vehicleFirst(Option option) {
        if (option.role() == Role.ERA || !option.builtFrom().isEmpty()) {
            return 0;
        }
        return option.role() == Role.DRIVE_SIDE ? 1 : option.role() == Role.MARKET ? 2 : 3;
    }

    private double settles(ChoiceState.Sound standing, Option option, boolean tryAll) {
        double spoken = spokenOf.getOrDefault(option.name(), 0);
        return tryAll && spoken > 0 ? closes(standing, option) : spoken;
    }

    /** How many values an answer closes elsewhere, on the average of the answers. */
    private double closes(ChoiceState.Sound standing, Option option) {
        List<OptionValue> answers = standing.open(option);
        double closed = 0;
        for (OptionValue answer : answers) {
            ChoiceState after = chooser.standing(standing.choices().with(option.name(), answer.value()));
            closed += standing.open().stream()
                    .filter(choice -> elsewhere(choice, option))
                    .filter(choice -> after instanceof ChoiceState.Sound sound && !sound.isOpen(choice))
                    .count();
        }
        return closed / answers.size();
    }

    private static boolean elsewhere(Choice choice, Option option) {
        return !choice.option().equals(option.name());
    }
}
