package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.explanation.FindingWords;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What an order says beside its choices and is still asked. */
final class HeadQuestions {

    private final Screen screen;
    private final Catalogue catalogue;
    private final AskedOrder asked;
    private final Set<AskedHead> skipped = EnumSet.noneOf(AskedHead.class);

    /** @param skipped what is not asked although the order does not say it */
    HeadQuestions(Screen screen, Catalogue catalogue, AskedOrder asked, Set<AskedHead> skipped) {
        this.screen = screen;
        this.catalogue = catalogue;
        this.asked = asked;
        this.skipped.addAll(skipped);
    }

    void skip(AskedHead head) {
        skipped.add(head);
    }

    Optional<AskedHead> next() {
        return EnumSet.allOf(AskedHead.class).stream().filter(this::open).findFirst();
    }

    boolean open(AskedHead head) {
        return !skipped.contains(head)
                && head.missing(asked.order())
                && (head != AskedHead.BRACKETS || !asked.unusedBrackets().isEmpty());
    }

    void print(AskedHead head) {
        screen.heading(head.asks());
        switch (head) {
            case PARTNER ->
                screen.wrapped(
                        2, String.join(", ", catalogue.workshop().partners().keySet()) + ".");
            case BRACKETS -> screen.wrapped(2, brackets());
            default -> {
                // The question says it all.
            }
        }
        screen.wrapped(2, head.without());
    }

    private String brackets() {
        FindingWords says = new FindingWords(asked.choices().family());
        return asked.unusedBrackets().stream()
                        .map(line -> says.line(line.text()).english())
                        .collect(Collectors.joining(", "))
                + ".";
    }
}
