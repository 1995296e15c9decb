package boltlore.choosing;

import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One question after the other, with a way back. Questions put off come again after all others. */
public final class Interview {

    private final Chooser chooser;
    private final QuestionOrder order;
    private final Deque<Point> before = new ArrayDeque<>();
    private final Set<OptionName> putOff = new LinkedHashSet<>();
    private Point now;

    /** @param answered options in the order of their answers, the newest first */
    private record Point(ChoiceState.Sound standing, List<OptionName> answered) {}

    public Interview(Chooser chooser, ChoiceState.Sound start) {
        this.chooser = chooser;
        this.order = new QuestionOrder(chooser);
        this.now = new Point(start, List.of());
    }

    public ChoiceState.Sound standing() {
        return now.standing();
    }

    /** What means most to the customer: what is fixed, what has a rank, and of the rest what was said last. */
    public Importance importance(Importance known) {
        return known.thenNewest(now.answered());
    }

    /** The next question; empty where every option is settled. */
    public Optional<Option> question() {
        List<Option> questions = standing().questions();
        List<Option> fresh = questions.stream()
                .filter(option -> !putOff.contains(option.name()))
                .toList();
        if (fresh.isEmpty()) {
            putOff.clear();
        }
        return order.next(standing(), fresh.isEmpty() ? questions : fresh);
    }

    public void putOff(Option question) {
        putOff.add(question.name());
    }

    /**
     * Answers a question.
     *
     * @param answer an open value
     * @return what the answer settles beside its own question
     */
    public List<Choice> answer(Choice answer) {
        List<OptionName> answered = new ArrayList<>(now.answered());
        answered.remove(answer.option());
        answered.add(0, answer.option());
        Set<Choice> known = Set.copyOf(Chooser.list(standing().withForced()));
        become(standing().choices().with(answer.option(), answer.value()), answered);
        List<Choice> settled = new ArrayList<>(Chooser.list(standing().withForced()));
        settled.removeIf(choice -> known.contains(choice) || choice.equals(answer));
        return settled;
    }

    /** Goes on with other choices, which some order keeps. */
    public void change(Choices choices) {
        become(choices, now.answered());
    }

    private void become(Choices choices, List<OptionName> answered) {
        if (!(chooser.standing(choices) instanceof ChoiceState.Sound sound)) {
            throw new IllegalArgumentException("No order keeps " + choices);
        }
        before.push(now);
        now = new Point(sound, List.copyOf(answered));
    }

    /** Takes the last answer or change back; false where there is none. */
    public boolean undo() {
        if (before.isEmpty()) {
            return false;
        }
        now = before.pop();
        return true;
    }
}
