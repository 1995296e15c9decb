package boltlore.cli;

import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choosing.ConflictWords;
import boltlore.choosing.Interview;
import boltlore.choosing.Opening;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** The talk at the desk: questions, answers, and the words that explain, go back or end it. */
final class AskSession {

    private static final String STOP = "stop";

    /** As long as somebody waits who has asked for it. */
    private static final long OPENING_NANOS = TimeUnit.SECONDS.toNanos(20);

    private static final String HELP =
            "Answer with a number or a value. Or: usual, later, undo, why VALUE, open VALUE, card, stop.";

    private final Dialogue dialogue;
    private final Screen screen;
    private final SalesDesk desk;
    private final Interview interview;
    private final JobCard card;
    private final ConflictWords words;

    AskSession(Dialogue dialogue, SalesDesk desk, Interview interview) {
        this.dialogue = dialogue;
        this.screen = dialogue.screen();
        this.desk = desk;
        this.interview = interview;
        this.card = new JobCard(screen, desk);
        this.words = new ConflictWords(desk.choices().family());
    }

    /** Whether every question was answered; false where the talk was stopped or the input ended. */
    boolean run() {
        screen.heading(desk.choices().family().says().english());
        card.settled(interview.standing());
        screen.wrapped(0, HELP);
        Optional<Option> question = interview.question();
        while (question.isPresent()) {
            if (!asked(question.get())) {
                screen.wrapped(0, interview.standing().questions().size() + " questions are open.");
                return false;
            }
            question = interview.question();
        }
        card.settled(interview.standing());
        return true;
    }

    /** Whether the talk goes on. */
    private boolean asked(Option question) {
        card.question(interview.standing(), question);
        Optional<String> line = dialogue.ask(question.name() + "?");
        line.filter(said -> !said.equals(STOP)).ifPresent(said -> heard(question, said));
        return line.isPresent() && !line.get().equals(STOP);
    }

    private void heard(Option asked, String line) {
        String[] said = line.split("\\s+", 2);
        String rest = said.length > 1 ? said[1] : "";
        switch (said[0]) {
            case "" -> screen.wrapped(0, HELP);
            case "usual" -> usual(asked);
            case "later" -> interview.putOff(asked);
            case "undo" -> undo();
            case "card" -> card.print(interview.standing(), false);
            default -> explained(asked, said[0], rest, line);
        }
    }

    private void explained(Option asked, String verb, String rest, String line) {
        switch (verb) {
            case "why" -> value(asked, rest).ifPresent(this::why);
            case "open" -> value(asked, rest).ifPresent(this::opening);
            default -> value(asked, line).ifPresent(this::answer);
        }
    }

    private void usual(Option asked) {
        String usual = asked.usual();
        if (usual == null) {
            screen.wrapped(0, "There is no usual answer to this question.");
        } else {
            answer(new Choice(asked.name(), usual));
        }
    }

    private void undo() {
        screen.wrapped(0, interview.undo() ? "The last answer is taken back." : "There is no answer to take back.");
    }

    /** A value of the question by number or name, or of any question as OPTION=VALUE. */
    private Optional<Choice> value(Option asked, String said) {
        String written = said.contains("=") ? said : asked.name() + "=" + numbered(asked.valueNames(), said);
        Outcome<Choice> choice = WrittenChoices.one(desk.choices().family(), written);
        choice.faults().forEach(fault -> screen.wrapped(0, FaultWords.of(fault)));
        return choice instanceof Outcome.Sound<Choice> sound ? Optional.of(sound.value()) : Optional.empty();
    }

    private static String numbered(List<String> names, String said) {
        boolean number = said.matches("\\d{1,6}") && !names.contains(said);
        int place = number ? Integer.parseInt(said) : 0;
        return place >= 1 && place <= names.size() ? names.get(place - 1) : said;
    }

    private void answer(Choice choice) {
        if (!interview.standing().isOpen(choice)) {
            why(choice);
            screen.wrapped(0, "'open " + choice + "' says what would open it.");
            return;
        }
        interview.answer(choice).forEach(forced -> screen.wrapped(2, whyForced(forced)));
        screen.wrapped(2, card.foot(interview.standing().choices()));
    }

    private String whyForced(Choice forced) {
        return words.forced(
                forced, desk.chooser().whyForced(interview.standing().choices(), forced, desk.importance()));
    }

    private void why(Choice choice) {
        boolean open = interview.standing().isOpen(choice);
        screen.wrapped(
                2,
                open
                        ? words.says(choice) + " is open."
                        : card.why(interview.standing().choices(), choice));
    }

    private void opening(Choice choice) {
        desk.time().begin(OPENING_NANOS);
        try {
            Opening opening = desk.repairer().opening(interview.standing().choices(), choice, desk.importance());
            new OpeningText(screen, words).print(Optional.of(choice), opening, false);
        } catch (Deadline.Passed e) {
            screen.wrapped(2, "What would open " + words.says(choice) + " was not found, because " + e.why() + ".");
        }
    }
}
