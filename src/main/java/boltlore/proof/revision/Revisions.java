package boltlore.proof.revision;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.choices.Choices;
import boltlore.choices.Mentions;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.logic.OrderCounter;
import boltlore.logic.StructuralNumbering;
import boltlore.logic.Term;
import boltlore.logic.Truth;
import boltlore.logic.ValidOrders;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.proof.KitView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Proves, part by part, which kits an edit of a family changes. */
public final class Revisions {

    private static final int MOST_CASES = 60;
    private static final Count TIME_UP = new Count.GivenUp("the time was up");

    private final KitView before;
    private final KitView after;
    private final UnionFamily union;
    private final ValidOrders valid;
    private @Nullable OrderCounter counter;
    private final Projections projections;
    private final Deadline deadline;
    private final StructuralNumbering sameness = new StructuralNumbering();
    private final List<PartChange> changes = new ArrayList<>();
    private final List<PartEdit> edits = new ArrayList<>();
    private final PartEdits partEdits;
    private final Map<PartNumber, String> undecided = new TreeMap<>();

    private Revisions(KitView before, KitView after, Deadline deadline) {
        this.before = before;
        this.after = after;
        this.deadline = deadline;
        this.partEdits = new PartEdits(before, after);
        this.union = UnionFamily.of(before.family(), after.family());
        this.valid = new ValidOrders(union.family(), union.both(), deadline);
        this.projections = new Projections(union.family(), valid);
    }

    /** What becomes of the kits of the family of that name, with nothing left out of them. */
    public static Revision compare(Catalogue before, Catalogue after, String family, Deadline deadline) {
        Family earlier = before.family(family);
        Family later = after.family(family);
        return new Revisions(
                        KitView.of(before, earlier, false, deadline),
                        KitView.of(after, later, false, deadline),
                        deadline)
                .compare();
    }

    private Revision compare() {
        List<PartNumber> parts = Stream.of(before, after)
                .flatMap(kit -> kit.bringings().parts().stream())
                .distinct()
                .sorted()
                .toList();
        return told(parts.subList(answered(parts), parts.size()));
    }

    /** How many of the parts, from the first, there was time for. */
    private int answered(List<PartNumber> parts) {
        int answered = 0;
        try {
            for (PartNumber part : parts) {
                compare(part);
                answered++;
            }
            return answered;
        } catch (Deadline.Passed e) {
            return answered;
        }
    }

    private List<Term> terms(KitView kit, PartNumber part) {
        return kit.catalogue().parts().containsKey(part) ? kit.parts().terms(part) : List.of();
    }

    /** A kit in which the part is another one is another kit, in whatever quantity. */
    private void edits(PartNumber part) {
        List<PartEdit.Edit> what = partEdits.of(part);
        if (!what.isEmpty()) {
            Condition when = All.of(before.parts().present(part), after.parts().present(part));
            if (valid.some(when)) {
                edits.add(new PartEdit(part, what, when, counter().with(when)));
            }
        }
    }

    private void compare(PartNumber part) {
        edits(part);
        Difference difference = Difference.of(terms(before, part), terms(after, part), sameness);
        if (difference.isNothing()) {
            return;
        }
        SortedSet<OptionName> spokenOf = new TreeSet<>();
        difference.conditions().forEach(condition -> spokenOf.addAll(Mentions.find(condition)));
        Optional<List<Choices>> all = projections.onto(spokenOf);
        if (all.isEmpty()) {
            undecided.put(part, "more than " + Projections.MOST + " cases of " + spokenOf.size() + " options");
            return;
        }
        SortedSet<BigDecimal> differences = new TreeSet<>();
        List<Condition> changed = new ArrayList<>();
        for (Choices projection : all.get()) {
            BigDecimal by = difference.in(new Truth(projection));
            if (by.signum() != 0) {
                differences.add(by.stripTrailingZeros());
                changed.add(exactly(projection));
            }
        }
        if (!changed.isEmpty()) {
            Condition when = Any.of(changed);
            changes.add(new PartChange(
                    part, when, List.copyOf(differences), counter().with(when)));
        }
    }

    private static Condition exactly(Choices projection) {
        List<Condition> all = new ArrayList<>();
        projection
                .values()
                .forEach((option, value) -> all.add(new Condition.Is(option, new TreeSet<>(List.of(value)))));
        return new Condition.All(all);
    }

    private Revision told(List<PartNumber> unproved) {
        Condition quantities = Any.of(changes.stream().map(PartChange::when).toList());
        Condition change = Any.of(Stream.concat(
                        changes.stream().map(PartChange::when), edits.stream().map(PartEdit::when))
                .toList());
        List<OptionName> newOptions = new ArrayList<>(union.onlyBefore());
        newOptions.addAll(union.onlyAfter());
        return new Revision(
                inTime(() -> counter().all(), TIME_UP),
                inTime(() -> only(union.before(), union.after()), TIME_UP),
                inTime(() -> only(union.after(), union.before()), TIME_UP),
                inTime(() -> counter().with(change), TIME_UP),
                inTime(() -> Cases.list(union.family(), valid, change, MOST_CASES), Optional.empty()),
                List.copyOf(changes),
                List.copyOf(edits),
                new LinkedHashMap<>(undecided),
                List.copyOf(unproved),
                newOptions,
                inTime(() -> valid.witness(quantities).map(this::example), Optional.empty()),
                notes());
    }

    private Map<PartNumber, List<RevisionNote>> notes() {
        ChangeNotes notes = new ChangeNotes(
                before.catalogue(), after.catalogue(), after.family().name());
        Map<PartNumber, List<RevisionNote>> all = new TreeMap<>();
        Stream.concat(changes.stream().map(PartChange::part), edits.stream().map(PartEdit::part))
                .forEach(part -> all.computeIfAbsent(part, notes::of));
        return all;
    }

    private OrderCounter counter() {
        OrderCounter made = counter;
        if (made == null) {
            made = new OrderCounter(union.family(), union.both(), deadline, false);
            counter = made;
        }
        return made;
    }

    private static <T> T inTime(Supplier<T> answer, T otherwise) {
        try {
            return answer.get();
        } catch (Deadline.Passed e) {
            return otherwise;
        }
    }

    private Count only(List<Limit> kept, List<Limit> broken) {
        return new OrderCounter(union.family(), kept, deadline, false).with(UnionFamily.broken(broken));
    }

    private ExampleKit example(Choices order) {
        SortedMap<PartNumber, BigDecimal> was = new TreeMap<>();
        SortedMap<PartNumber, BigDecimal> is = new TreeMap<>();
        Truth truth = new Truth(order);
        for (PartChange change : changes) {
            if (truth.of(change.when())) {
                was.put(change.part(), quantity(before, change.part(), truth));
                is.put(change.part(), quantity(after, change.part(), truth));
            }
        }
        return new ExampleKit(order, was, is);
    }

    private BigDecimal quantity(KitView kit, PartNumber part, Truth truth) {
        return terms(kit, part).stream()
                .filter(term -> truth.of(term.when()))
                .map(Term::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
