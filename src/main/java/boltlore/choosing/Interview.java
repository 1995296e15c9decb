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
    private final Deque<Standing.Sound> before = new ArrayDeque<>();
    private final Set<OptionName> putOff = new LinkedHashSet<>();
    private Standing.Sound now;

    public Interview(Chooser chooser, Standing.Sound start) {
        this.chooser = chooser;
        this.order = new QuestionOrder(chooser);
        this.now = start;
    }

    public Standing.Sound standing() {
        return now;
    }

    /** The next question; empty where every option is settled. */
    public Optional<Option> question() {
        List<Option> questions = now.questions();
        List<Option> fresh = questions.stream()
                .filter(option -> !putOff.contains(option.name()))
                .toList();
        if (fresh.isEmpty()) {
            putOff.clear();
        }
        return order.next(now, fresh.isEmpty() ? questions : fresh);
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
        Choices next = now.choices().with(answer.option(), answer.value());
        if (!(chooser.standing(next) instanceof Standing.Sound sound)) {
            throw new IllegalArgumentException(answer + " is not open");
        }
        Set<Choice> known = Set.copyOf(Chooser.list(now.withForced()));
        List<Choice> settled = new ArrayList<>(Chooser.list(sound.withForced()));
        settled.removeIf(choice -> known.contains(choice) || choice.equals(answer));
        before.push(now);
        now = sound;
        return settled;
    }

    /** Takes the last answer back; false where there is none. */
    public boolean undo() {
        if (before.isEmpty()) {
            return false;
        }
        now = before.pop();
        return true;
    }
}
