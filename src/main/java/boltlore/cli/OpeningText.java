package boltlore.cli;

import boltlore.asking.FigureWords;
import boltlore.asking.KitFigures;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choosing.BestKit;
import boltlore.choosing.Conflict;
import boltlore.choosing.ConflictWords;
import boltlore.choosing.Opening;
import boltlore.choosing.Repair;
import boltlore.measure.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What would open a value or mend an order, for the screen: the preferred change first. */
final class OpeningText {

    private static final int SHOWN = 5;

    private final Screen screen;
    private final ConflictWords words;

    OpeningText(Screen screen, ConflictWords words) {
        this.screen = screen;
        this.words = words;
    }

    /** @param value what is to be opened; empty where an order is to be mended */
    void print(Optional<Choice> value, Opening opening, boolean all) {
        String wanted = value.map(words::says).orElse("a valid order");
        if (opening instanceof Opening.Repairs repairs) {
            repairs(wanted, repairs, all ? Integer.MAX_VALUE : SHOWN);
        } else if (opening instanceof Opening.Impossible impossible) {
            impossible(wanted, value, impossible.conflict());
        } else if (opening instanceof Opening.AlreadyOpen) {
            screen.wrapped(0, "Nothing has to be changed for " + wanted + ".");
        } else {
            screen.wrapped(0, "No change helps: each kit with " + wanted + " has a finding that stops its sheets.");
        }
    }

    private void impossible(String wanted, Optional<Choice> value, Conflict conflict) {
        boolean never = conflict.choices().isEmpty();
        String why = never ? "whatever is chosen" : "because the fixed choices stand against it";
        screen.wrapped(0, "No change leads to " + wanted + ", " + why + ".");
        screen.wrapped(
                2, value.map(choice -> words.closed(choice, conflict)).orElseGet(() -> words.contradiction(conflict)));
    }

    private void repairs(String wanted, Opening.Repairs found, int most) {
        List<Repair> repairs = found.repairs();
        screen.heading("For " + wanted + ":");
        for (int i = 0; i < Math.min(most, repairs.size()); i++) {
            screen.wrapped(2, (i + 1) + "  " + sentence(repairs.get(i)));
        }
        int more = repairs.size() - most;
        if (more > 0 || !found.complete()) {
            screen.wrapped(2, more > 0 ? more + " further ways; --all tells them." : "There are further ways.");
        }
    }

    private String sentence(Repair repair) {
        List<String> changes = new ArrayList<>();
        for (int i = 0; i < repair.givenUp().size(); i++) {
            Choice taken = repair.taken().get(i);
            List<OptionValue> others = repair.alternatives().getOrDefault(taken.option(), List.of());
            String or = others.isEmpty() ? "" : " (or " + says(others) + ")";
            changes.add(words.says(taken) + or + " instead of "
                    + words.says(repair.givenUp().get(i)));
        }
        return String.join("; ", changes) + ": " + figures(repair) + ".";
    }

    private static String says(List<OptionValue> values) {
        return values.stream().map(OptionValue::says).map(Wording::english).collect(Collectors.joining(", or "));
    }

    private static String figures(Repair repair) {
        BestKit kit = repair.kit();
        if (repair.before() == null) {
            return KitFigures.say(kit.pricing());
        }
        String price = repair.morePrice()
                .map(more -> FigureWords.difference(kit, more))
                .orElse("no price");
        return price + ", " + FigureWords.days(repair.moreLeadDays());
    }
}
