package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.logic.Deadline;
import boltlore.logic.FewestChanges;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Finds the smallest changes that open a value or mend choices, and tries each out as a whole kit before it is shown. */
public final class Repairer {

    /** So many repairs are priced and compared. */
    private static final int MOST_COMPARED = 24;

    private final Chooser chooser;
    private final BestKits best;

    public Repairer(Chooser chooser, BestKits best) {
        this.chooser = chooser;
        this.best = best;
    }

    /** What would open the value, which may stand for an option that is chosen otherwise. */
    public Opening opening(Choices choices, Choice wanted, Importance importance) {
        String own = choices.value(wanted.option()).orElse(wanted.value());
        if (importance.isFirm(wanted) && !own.equals(wanted.value())) {
            return new Opening.Impossible(new Conflict(List.of(new Choice(wanted.option(), own)), List.of()));
        }
        return opening(choices, choices.with(wanted.option(), wanted.value()), List.of(wanted), importance);
    }

    /** What would make the choices valid again. */
    public Opening mending(Choices choices, Importance importance) {
        return opening(choices, choices, List.of(), importance);
    }

    private Opening opening(Choices before, Choices after, List<Choice> wanted, Importance importance) {
        if (chooser.some(Chooser.list(after))) {
            return new Opening.AlreadyOpen();
        }
        Map<Boolean, List<Choice>> kept = Chooser.list(after).stream()
                .collect(Collectors.partitioningBy(choice -> wanted.contains(choice) || importance.isFirm(choice)));
        List<Choice> firm = kept.getOrDefault(true, List.of());
        return chooser.some(firm)
                ? repairs(before, after, firm, kept.getOrDefault(false, List.of()), importance)
                : new Opening.Impossible(chooser.conflictAmong(firm, wanted, importance));
    }

    private Opening repairs(
            Choices before, Choices after, List<Choice> kept, List<Choice> requests, Importance importance) {
        boolean sound = chooser.some(Chooser.list(before));
        BestKit kitBefore = sound ? best.bestAlone(Aim.CHEAPEST, before).orElse(null) : null;
        FewestChanges changes = new FewestChanges(chooser.orders(), Wanted.all(kept), Wanted.all(requests));
        List<Repair> repairs = new ArrayList<>();
        boolean complete = false;
        try {
            Optional<List<Condition>> givenUp = changes.next(best.goingOn());
            while (givenUp.isPresent() && repairs.size() < MOST_COMPARED) {
                Optional<Repair> repair = repair(after, among(requests, givenUp.get()), kitBefore);
                repair.ifPresent(repairs::add);
                if (repair.isPresent()) {
                    changes.further(givenUp.get());
                }
                givenUp = changes.next(best.goingOn());
            }
            complete = givenUp.isEmpty();
        } catch (Deadline.Passed e) {
            if (repairs.isEmpty()) {
                throw e;
            }
        }
        repairs.sort(preferred(importance));
        return repairs.isEmpty() ? new Opening.Stopped() : new Opening.Repairs(repairs, complete);
    }

    /** Fewest changes, then those that mean least to the customer, then the cheapest. */
    private static Comparator<Repair> preferred(Importance importance) {
        return Comparator.<Repair>comparingInt(repair -> repair.givenUp().size())
                .thenComparing(Comparator.<Repair>comparingInt(repair -> importance.place(repair.givenUp()))
                        .reversed())
                .thenComparing(repair -> repair.kit().sum())
                .thenComparing(repair -> repair.givenUp().toString());
    }

    private static List<Choice> among(List<Choice> requests, List<Condition> wishes) {
        return requests.stream()
                .filter(request -> wishes.contains(Wanted.of(request)))
                .toList();
    }

    private Optional<Repair> repair(Choices after, List<Choice> givenUp, @Nullable BestKit before) {
        Choices left = after;
        for (Choice choice : givenUp) {
            left = left.without(choice.option());
        }
        Choices open = left;
        return best.bestAlone(Aim.CHEAPEST, open).map(kit -> repaired(open, givenUp, kit, before));
    }

    private Repair repaired(Choices open, List<Choice> givenUp, BestKit kit, @Nullable BestKit before) {
        Choices repaired = open;
        List<Choice> taken = new ArrayList<>();
        for (Choice choice : givenUp) {
            String value = kit.choices().value(choice.option()).orElseThrow();
            taken.add(new Choice(choice.option(), value));
            repaired = repaired.with(choice.option(), value);
        }
        return new Repair(givenUp, taken, alternatives(open, taken), repaired, kit, before);
    }

    private SortedMap<OptionName, List<OptionValue>> alternatives(Choices open, List<Choice> taken) {
        SortedMap<OptionName, List<OptionValue>> alternatives = new TreeMap<>();
        if (chooser.standing(open) instanceof ChoiceState.Sound sound) {
            taken.forEach(choice -> alternatives.put(choice.option(), others(open, sound, choice)));
        }
        alternatives.values().removeIf(List::isEmpty);
        return alternatives;
    }

    private List<OptionValue> others(Choices open, ChoiceState.Sound sound, Choice taken) {
        Option option = sound.choices().family().option(taken.option()).orElseThrow();
        return sound.open(option).stream()
                .filter(value -> !value.value().equals(taken.value()))
                .filter(value -> best.some(open.with(taken.option(), value.value())))
                .toList();
    }
}
