package boltlore.cli;

import boltlore.asking.PapersLanguage;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choosing.ChoiceState;
import boltlore.choosing.Importance;
import boltlore.choosing.Interview;
import boltlore.measure.LineName;
import boltlore.measure.OptionName;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * An order while it is asked for. Every change can be taken back and is kept in the draft, and prices follow it; what
 * nobody changes stays as it was given.
 */
final class AskedOrder {

    /** What can be taken back, and the question to ask again. */
    private record Change(
            Order before, boolean ofChoices, @Nullable Option asked) {}

    private final PapersLanguage papers;
    private final Function<Order, ChoosingSession> desks;
    private final DraftFile draft;
    private final Interview interview;
    private final Deque<Change> changes = new ArrayDeque<>();
    private ChoosingSession choosing;
    private AnswerFigures figures;
    private Order order;
    private boolean kept = true;

    /** @param desks the session that prices as an order has agreed */
    AskedOrder(
            CatalogueSession session,
            Function<Order, ChoosingSession> desks,
            ChoosingSession choosing,
            ChoiceState.Sound start,
            DraftFile draft) {
        this.papers = new PapersLanguage(session.catalogue());
        this.desks = desks;
        this.choosing = choosing;
        this.figures = new AnswerFigures(choosing);
        this.order = choosing.order();
        this.interview = new Interview(choosing.chooser(), start);
        this.draft = draft;
    }

    Order order() {
        return order;
    }

    ChoosingSession choosing() {
        return choosing;
    }

    AnswerFigures figures() {
        return figures;
    }

    Interview interview() {
        return interview;
    }

    ChoiceState.Sound standing() {
        return interview.standing();
    }

    Choices choices() {
        return standing().choices();
    }

    /** Of all choices so far; of those without a rank the newest means most. */
    Importance importance() {
        return interview.importance(Importance.of(order)).thenNewest(choosing.newest());
    }

    /** False where the last change could not be written into the draft. */
    boolean kept() {
        return kept;
    }

    boolean valid(Choices other) {
        return choosing.chooser().standing(other) instanceof ChoiceState.Sound;
    }

    /** Takes an answer, which may replace an earlier one, and tells what it settles beside its question. */
    List<Choice> answer(Choice choice) {
        Choices before = standing().withForced();
        List<Choice> settled = interview.answer(choice);
        Option asked = order.choices().family().option(choice.option()).orElse(null);
        changed(papers.following(before, standing().withForced(), with(choices())), true, asked);
        return settled;
    }

    void choose(Choices other) {
        Choices before = standing().withForced();
        interview.change(other);
        changed(papers.following(before, standing().withForced(), with(other)), true, null);
    }

    /** Takes what the order says beside its choices, and what its build date settles. */
    void say(Order said) {
        boolean ofChoices = !said.choices().equals(choices());
        if (ofChoices) {
            interview.change(said.choices());
        }
        changed(said, ofChoices, null);
    }

    /** What is chosen otherwise is no longer what the build date settled. */
    private Order with(Choices other) {
        TreeSet<OptionName> byDate = new TreeSet<>(order.settledByDate());
        byDate.removeIf(option -> !other.value(option).equals(order.choices().value(option)));
        return new OrderBuilder(order).choices(other).settledByDate(byDate).build();
    }

    private void changed(Order after, boolean ofChoices, @Nullable Option asked) {
        changes.push(new Change(order, ofChoices, asked));
        become(after);
    }

    private void become(Order after) {
        boolean soldAlike = after.partner().equals(order.partner())
                && after.terms().equals(order.terms())
                && Objects.equals(after.placed(), order.placed());
        order = after;
        if (!soldAlike) {
            choosing = desks.apply(order);
            figures = new AnswerFigures(choosing);
        }
        keep();
    }

    void keep() {
        kept = draft.keep(order);
    }

    boolean canGoBack() {
        return !changes.isEmpty();
    }

    /** Takes the last change back; tells the question that it answered, if it answered one. */
    Optional<Option> back() {
        Change last = changes.pop();
        if (last.ofChoices()) {
            interview.undo();
        }
        become(last.before());
        return Optional.ofNullable(last.asked());
    }

    /** Bracket lines that support nothing in the kit of what is chosen so far, where that is a whole kit. */
    SortedSet<LineName> unusedBrackets() {
        return choosing.best().unused(standing().withForced());
    }

    /** With every value that is the only one left. */
    Order finished() {
        return with(standing().withForced());
    }
}
