package boltlore.cli;

import boltlore.asking.AskedHead;
import boltlore.asking.MeasuredSaid;
import boltlore.catalogue.Catalogue;
import boltlore.explanation.FindingWords;
import boltlore.order.Order;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

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

    /** The whole order, before it is written. */
    void lastLook(JobCard card) {
        screen.heading("All is decided");
        card.decided(asked.standing());
        screen.wrapped(2, says(asked.order()));
        screen.wrapped(0, card.foot(asked.choices()));
        card.tooSoon(asked.order(), asked.choices()).ifPresent(late -> screen.wrapped(0, late));
        screen.wrapped(
                0, "'write' writes the order. Until then all can be changed: OPTION=VALUE, 'due DATE' …, 'undo'.");
    }

    /** What the order will say beside its choices. */
    private static String says(Order order) {
        List<String> says = new ArrayList<>();
        says.add("Order " + order.name() + " for " + order.customer());
        say(says, "through ", order.partner().isEmpty() ? null : order.partner());
        say(says, "vehicle built ", order.donorBuilt());
        say(says, "chassis number ", order.chassis().isEmpty() ? null : order.chassis());
        say(says, "placed ", order.placed());
        say(says, "due ", order.due());
        BigDecimal discount = order.terms().discountPercent();
        say(says, "discount ", discount == null ? null : discount.toPlainString() + " %");
        says.add("papers in " + Locale.forLanguageTag(order.language()).getDisplayLanguage(Locale.ENGLISH));
        return String.join(", ", says) + ".";
    }

    private static void say(List<String> says, String what, @Nullable Object value) {
        if (value != null) {
            says.add(what + value);
        }
    }

    void print(AskedHead head) {
        screen.heading(head.asks());
        switch (head) {
            case PARTNER ->
                screen.wrapped(
                        2, String.join(", ", catalogue.workshop().partners().keySet()) + ".");
            case MEASURED ->
                MeasuredSaid.open(asked.order()).forEach(measure -> screen.wrapped(2, MeasuredSaid.says(measure)));
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
