package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Line;
import boltlore.catalogue.Option;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.OptionName;
import boltlore.proof.KitView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** A part that is shaped for another body, another driver's side or another drive unit than the order has. */
final class MadeFor {

    private MadeFor() {}

    static List<FitFinding.Possible> findings(KitView kit) {
        List<FitFinding.Possible> all = new ArrayList<>();
        kit.family()
                .lines()
                .forEach(line -> kit.catalogue()
                        .part(line.part())
                        .geometry()
                        .madeFor()
                        .forEach((option, values) ->
                                other(kit, line, option, values).ifPresent(all::add)));
        return all;
    }

    /** A family without such an option has one of what the option tells apart, and nothing to compare with. */
    private static Optional<FitFinding.Possible> other(
            KitView kit, Line line, OptionName name, SortedSet<String> values) {
        Option option = kit.family().option(name).orElse(null);
        if (option == null) {
            return Optional.empty();
        }
        SortedSet<String> own = new TreeSet<>(values);
        own.retainAll(option.valueNames());
        Condition right = own.isEmpty() ? Any.NEVER : kit.kit().unfolded(new Condition.Is(name, own));
        return Optional.of(FitFinding.MADE_FOR_ANOTHER.when(
                All.of(kit.kit().in(line.name()), Any.but(right)),
                line.name().text(),
                name.text(),
                List.of(line.name()),
                "part",
                BoxContents.named(kit, line.part()),
                "option",
                name.text(),
                "values",
                List.copyOf(values)));
    }
}
