package boltlore.cli;

import boltlore.asking.KitFigures;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choices;
import boltlore.choosing.BestKit;
import boltlore.choosing.Chooser;
import boltlore.choosing.ConflictWords;
import boltlore.explanation.FindingWords;
import boltlore.measure.Wording;
import boltlore.resolution.Finding;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The best complete kit, for the screen: what it would settle, its figures, what else would be as good. */
final class BestKitText {

    private static final int MOST_NAMED = 12;

    private BestKitText() {}

    static void print(Screen screen, Choices before, BestKit kit, boolean cost) {
        screen.heading("The " + kit.aim().written() + " kit that keeps these choices");
        settled(before, kit).forEach(line -> screen.wrapped(2, line));
        screen.wrapped(2, (cost ? KitFigures.withCost(kit.pricing()) : KitFigures.say(kit.pricing())) + ".");
        KitFigures.noPrice(kit.pricing()).ifPresent(note -> screen.wrapped(2, note));
        screen.wrapped(2, proof(kit));
        kit.ties().values().forEach(values -> screen.wrapped(2, "As good: " + says(values) + "."));
        FindingWords findings = new FindingWords(before.family());
        kit.passedOver().stream().distinct().forEach(finding -> screen.wrapped(2, passedOver(finding, findings)));
    }

    private static List<String> settled(Choices before, BestKit kit) {
        ConflictWords words = new ConflictWords(before.family());
        return Chooser.list(kit.choices()).stream()
                .filter(choice -> before.value(choice.option()).isEmpty())
                .map(choice -> String.format(Locale.ROOT, "%-24s %s", choice, words.says(choice)))
                .toList();
    }

    private static String says(List<OptionValue> values) {
        String named = values.stream()
                .limit(MOST_NAMED)
                .map(OptionValue::says)
                .map(Wording::english)
                .collect(Collectors.joining(", or "));
        int more = values.size() - MOST_NAMED;
        return more > 0 ? named + ", or one of " + more + " others" : named;
    }

    private static String passedOver(Finding finding, FindingWords words) {
        return "Passed over, because a finding stops it: " + words.of(finding) + ".";
    }

    private static String proof(BestKit kit) {
        return switch (kit.aim()) {
            case LIGHTEST -> "Proved: no other weighs less, without the film of powder.";
            case SOONEST -> "Proved: no other is ready sooner, and of those as soon none has a lower price.";
            case CHEAPEST -> "Proved: no other has a lower price.";
            case DEAREST -> "Proved: no other has a higher price.";
        };
    }
}
