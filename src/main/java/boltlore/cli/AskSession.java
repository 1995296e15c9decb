package boltlore.cli;

import boltlore.asking.AskedHead;
import boltlore.asking.AskedHead.Asking;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choosing.ConflictWords;
import boltlore.choosing.Opening;
import boltlore.choosing.Repair;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.order.Order;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The talk at the desk: questions, answers, and the words that explain, go back or end it. */
final class AskSession {

    /** As long as somebody waits who has asked for it. */
    private static final long OPENING_NANOS = 20_000_000_000L;

    private static final Set<String> ENDS = Set.of("quit", "stop");

    private final Dialogue dialogue;
    private final Screen screen;
    private final Catalogue catalogue;
    private final AskedOrder asked;
    private final DraftFile draft;
    private final ConflictWords words;
    private final HeadQuestions heads;
    private @Nullable Option again;
    private @Nullable Asking shown;
    private List<Repair> offered = List.of();

    /** @param skipped what is not asked although the order does not say it */
    AskSession(Dialogue dialogue, Catalogue catalogue, AskedOrder asked, Set<AskedHead> skipped, DraftFile draft) {
        this.dialogue = dialogue;
        this.screen = dialogue.screen();
        this.catalogue = catalogue;
        this.asked = asked;
        this.draft = draft;
        this.words = new ConflictWords(asked.order().choices().family());
        this.heads = new HeadQuestions(screen, catalogue, asked, skipped);
    }

    /** The order as it was asked, every forced value in it; empty where the talk was ended before. */
    Optional<Order> run() {
        screen.heading(asked.order().choices().family().says().english());
        card().decided(asked.standing());
        screen.wrapped(0, AskCommand.SHORT_HELP);
        while (true) {
            Asking next = next();
            show(next);
            Optional<String> line = dialogue.ask(next.prompt());
            if (line.isEmpty() || ENDS.contains(line.get())) {
                return Optional.empty();
            }
            if (next.isLast() && line.get().equals("write")) {
                return Optional.of(asked.finished());
            }
            heard(next, line.get());
        }
    }

    private JobCard card() {
        return new JobCard(screen, asked.choosing());
    }

    /** The next question; where all is decided, whether the order is to be written. */
    private Asking next() {
        for (AskedHead first : AskedHead.BEFORE_OPTIONS) {
            if (heads.open(first)) {
                return new Asking(null, first);
            }
        }
        Option wanted = again;
        if (wanted != null && asked.standing().questions().contains(wanted)) {
            return new Asking(wanted, null);
        }
        Optional<Asking> question = asked.interview().question().map(option -> new Asking(option, null));
        return question.orElseGet(() -> new Asking(null, heads.next().orElse(null)));
    }

    /** A question that was only explained is not printed again. */
    private void show(Asking asking) {
        if (asking.equals(shown)) {
            return;
        }
        shown = asking;
        Option option = asking.option();
        AskedHead head = asking.head();
        if (option != null && option.group() != null) {
            SeveralAsked.of(asked.choices().family(), option.group()).print(screen, card(), asked.standing());
        } else if (option != null) {
            card().question(asked.standing(), option, asked.figures());
        } else if (head != null) {
            heads.print(head);
        } else {
            heads.lastLook(card());
        }
    }

    private void heard(Asking asking, String line) {
        String[] said = line.split("\\s+", 2);
        String rest = said.length > 1 ? said[1] : "";
        Option option = asking.option();
        boolean named =
                option != null && option.group() == null && option.value(line).isPresent();
        if (line.indexOf('\u001B') >= 0) {
            screen.wrapped(0, "Arrow keys are not read here; 'back' goes back, '?' lists what can be said.");
        } else if (named && option != null) {
            answer(new Choice(option.name(), line));
        } else if (!talked(asking, said[0], rest)) {
            answered(asking, line);
        }
    }

    /** Whether it was a word that is no answer. */
    private boolean talked(Asking asking, String verb, String rest) {
        Optional<AskedHead> named = rest.isEmpty() ? Optional.empty() : AskedHead.named(verb);
        named.ifPresent(head -> head(head, rest));
        switch (verb) {
            case "?", "help" -> AskCommand.HELP.forEach(line -> screen.line("  " + line));
            case "list" -> card().print(asked.standing(), false);
            case "back" -> back(true);
            case "undo" -> back(false);
            case "save" -> {
                asked.keep();
                screen.wrapped(0, draft.says());
            }
            case "why" -> value(asking.option(), rest).ifPresent(this::why);
            case "open" -> value(asking.option(), rest).ifPresent(this::opening);
            case "take" -> take(rest);
            default -> {
                return named.isPresent();
            }
        }
        return true;
    }

    private void answered(Asking asking, String line) {
        Option option = asking.option();
        AskedHead head = asking.head();
        if (option == null
                && head != null
                && !WrittenChoices.namesOption(asked.choices().family(), line)) {
            given(head, line);
        } else if (line.isEmpty()) {
            screen.wrapped(0, AskCommand.SHORT_HELP);
        } else if (option != null && line.equals("later")) {
            SeveralAsked.together(asked.choices().family(), option).forEach(asked.interview()::putOff);
            again = null;
        } else if (option != null && line.equals("default")) {
            usual(option);
        } else if (option != null && option.group() != null && line.indexOf('=') < 0) {
            SeveralAsked.of(asked.choices().family(), option.group())
                    .said(line, screen, asked, words)
                    .ifPresent(this::choose);
        } else {
            value(option, line).ifPresent(this::answer);
        }
    }

    /** One change to take back. */
    private void choose(Choices all) {
        asked.choose(all);
        changed();
        screen.wrapped(2, card().foot(asked.choices()));
    }

    private void given(AskedHead head, String line) {
        if (!line.isEmpty()) {
            head(head, line);
        } else if (head.optional()) {
            heads.skip(head);
        }
    }

    private void head(AskedHead head, String said) {
        Outcome<Order> outcome = head.said(asked.order(), said, catalogue);
        outcome.faults().forEach(fault -> screen.wrapped(2, FaultWords.say(fault)));
        if (!(outcome instanceof Outcome.Sound<Order> sound)) {
            return;
        }
        Choices after = sound.value().choices();
        if (!asked.valid(after)) {
            screen.wrapped(2, words.contradiction(asked.choosing().chooser().conflict(after, asked.importance())));
            return;
        }
        boolean settles = !after.equals(asked.choices());
        asked.say(sound.value());
        changed();
        if (settles) {
            card().decided(asked.standing());
        }
        if (head == AskedHead.DUE || head == AskedHead.PLACED) {
            card().tooSoon(asked.order(), asked.choices()).ifPresent(late -> screen.wrapped(2, late));
        }
    }

    private void changed() {
        again = null;
        shown = null;
        offered = List.of();
        if (!asked.kept()) {
            screen.wrapped(0, "The draft could not be written. 'save' tries again.");
        }
    }

    private void back(boolean toQuestion) {
        if (!asked.canGoBack()) {
            screen.wrapped(
                    0,
                    "There is nothing to take back of this talk. What was said before it OPTION=VALUE answers anew.");
            return;
        }
        Optional<Option> question = asked.back();
        changed();
        again = toQuestion ? question.orElse(null) : null;
        screen.wrapped(0, "The last change is taken back.");
    }

    private void usual(Option question) {
        String usual = question.usual();
        if (usual == null) {
            screen.wrapped(0, "There is no default for this question.");
        } else {
            answer(new Choice(question.name(), usual));
        }
    }

    /** A value of the question by number or name, or of any question as OPTION=VALUE. */
    private Optional<Choice> value(@Nullable Option question, String said) {
        Outcome<Choice> choice = WrittenChoices.answer(asked.choices().family(), question, said);
        choice.faults().forEach(fault -> screen.wrapped(0, FaultWords.say(fault)));
        return choice instanceof Outcome.Sound<Choice> sound ? Optional.of(sound.value()) : Optional.empty();
    }

    /** An answer may also replace an earlier one. */
    private void answer(Choice choice) {
        if (!asked.valid(asked.choices().with(choice.option(), choice.value()))) {
            why(choice);
            screen.wrapped(2, "'open " + choice + "' says what would have to change for it.");
            return;
        }
        List<Choice> settled = asked.answer(choice);
        changed();
        settled.forEach(each -> screen.wrapped(2, card().whyForced(asked.standing(), each)));
        screen.wrapped(2, card().foot(asked.choices()));
    }

    private void why(Choice choice) {
        screen.wrapped(2, card().why(asked.standing(), choice));
    }

    private void opening(Choice choice) {
        ChoosingSession choosing = asked.choosing();
        choosing.time().begin(OPENING_NANOS);
        try {
            Opening opening = choosing.repairer().opening(asked.choices(), choice, asked.importance());
            new OpeningText(screen, words).print(Optional.of(choice), opening, false);
            offered = opening instanceof Opening.Repairs repairs ? repairs.repairs() : List.of();
            if (!offered.isEmpty()) {
                screen.wrapped(2, "'take 1' changes it so.");
            }
        } catch (Deadline.Passed tooLate) {
            screen.wrapped(
                    2, "What would open " + words.says(choice) + " was not found, because " + tooLate.why() + ".");
        }
    }

    private void take(String number) {
        int place = number.matches("\\d{1,3}") ? Integer.parseInt(number) : 0;
        if (place >= 1 && place <= offered.size()) {
            choose(offered.get(place - 1).choices());
        } else {
            screen.wrapped(0, "Say 'open VALUE' first, then 'take' with the number of a way.");
        }
    }
}
