package boltlore.cli;

import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choosing.Aim;
import boltlore.choosing.BestKit;
import boltlore.choosing.ConflictWords;
import boltlore.explanation.FindingWords;
import boltlore.measure.Wording;
import boltlore.resolution.Finding;
import java.util.stream.Collectors;

/** The best complete kit, for the screen: what it would settle, its figures, what else would be as good. */
final class BestKitText {

    private BestKitText() {}

    static void print(Screen screen, Choices before, BestKit kit) {
        ConflictWords words = new ConflictWords(before.family());
        screen.heading("The " + kit.aim().written() + " kit that keeps these choices");
        kit.choices().values().forEach((option, value) -> {
            if (before.value(option).isEmpty()) {
                String name = option + "=" + value;
                screen.wrapped(2, "%-24s %s".formatted(name, words.says(new Choice(option, value))));
            }
        });
        screen.wrapped(2, KitFigures.of(kit.bill()) + ".");
        screen.wrapped(2, proof(kit));
        kit.ties()
                .forEach((option, values) -> screen.wrapped(
                        2,
                        "As good: "
                                + values.stream()
                                        .map(OptionValue::says)
                                        .map(Wording::english)
                                        .collect(Collectors.joining(", or "))
                                + "."));
        FindingWords findings = new FindingWords(before.family());
        kit.passedOver().stream().distinct().forEach(finding -> screen.wrapped(2, passedOver(finding, findings)));
    }

    private static String passedOver(Finding finding, FindingWords words) {
        return "Passed over, because a finding stops it: " + words.of(finding) + ".";
    }

    private static String proof(BestKit kit) {
        String grain = kit.grain().toPlainString();
        if (kit.aim() == Aim.LIGHTEST) {
            return "Proved, with masses to " + grain + " kg and without the film of powder: no other weighs less.";
        }
        String what = kit.aim() == Aim.SOONEST
                ? "no other is ready sooner, and of those as soon none costs less."
                : "no other costs " + (kit.aim() == Aim.DEAREST ? "more." : "less.");
        return "Proved, with unrounded costs to " + Figures.currency(kit) + " " + grain + ": " + what;
    }
}
