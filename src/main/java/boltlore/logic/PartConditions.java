package boltlore.logic;

import boltlore.catalogue.BottomUp;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** When a part is in the kit and how many of it, as conditions and terms over options alone. */
public final class PartConditions {

    /** An ask for a part: by the terms and the presence of its asker. */
    private record Asked(List<Term> terms, Condition present, Need need) {}

    private record Inside(PartNumber assembly, BigDecimal quantity) {}

    private final KitConditions kit;
    private final Map<PartNumber, List<Line>> linesOf = new LinkedHashMap<>();
    private final Map<PartNumber, List<Inside>> insideOf = new HashMap<>();
    private final Map<PartNumber, List<Line>> linesNeeding = new HashMap<>();
    private final Map<PartNumber, List<PartNumber>> partsNeeding = new HashMap<>();
    private final Map<PartNumber, List<Need>> companionNeeds = new HashMap<>();
    private final BottomUp<PartNumber, Condition> present =
            new BottomUp<>(new HashMap<>(), this::askers, part -> Any.of(ways(part)));
    private final BottomUp<PartNumber, List<Term>> terms =
            new BottomUp<>(new HashMap<>(), this::askers, part -> List.copyOf(sum(part)));

    public PartConditions(KitConditions kit) {
        this.kit = kit;
        for (Companion companion : kit.family().companions()) {
            companionNeeds
                    .computeIfAbsent(companion.part(), part -> new ArrayList<>())
                    .addAll(companion.needs());
        }
        kit.family().lines().forEach(line -> {
            linesOf.computeIfAbsent(line.part(), part -> new ArrayList<>()).add(line);
            line.needs().stream()
                    .map(Need::part)
                    .distinct()
                    .forEach(part -> linesNeeding
                            .computeIfAbsent(part, asked -> new ArrayList<>())
                            .add(line));
        });
        for (Part part : kit.catalogue().parts().values()) {
            asks(part);
        }
    }

    private void asks(Part part) {
        for (Contained child : part.contains()) {
            insideOf.computeIfAbsent(child.part(), asked -> new ArrayList<>())
                    .add(new Inside(part.number(), child.quantity()));
        }
        needsOf(part.number()).stream()
                .map(Need::part)
                .distinct()
                .forEach(asked -> partsNeeding
                        .computeIfAbsent(asked, number -> new ArrayList<>())
                        .add(part.number()));
    }

    public Catalogue catalogue() {
        return kit.catalogue();
    }

    /** What the part needs in this family: by itself, and as the family's companions say. */
    public List<Need> needsOf(PartNumber part) {
        List<Need> all = new ArrayList<>(kit.catalogue().part(part).needs());
        all.addAll(companionNeeds.getOrDefault(part, List.of()));
        return all;
    }

    /** When the part is in the kit; {@link Any#NEVER} where nothing in the family brings it. */
    public Condition present(PartNumber part) {
        return present.of(part);
    }

    /** Parts that contain or need the part. */
    private List<PartNumber> askers(PartNumber part) {
        return Stream.concat(
                        insideOf.getOrDefault(part, List.of()).stream().map(Inside::assembly),
                        partsNeeding.getOrDefault(part, List.of()).stream())
                .toList();
    }

    /** When the condition holds, with what it says of positions put in terms of options. */
    public Condition unfolded(Condition condition) {
        return kit.unfolded(condition);
    }

    /** When a line or a need brings the part, other than inside an assembly. */
    public Condition brought(PartNumber part) {
        return Any.of(brings(part));
    }

    private List<Condition> ways(PartNumber part) {
        List<Condition> ways = brings(part);
        insideOf.getOrDefault(part, List.of()).forEach(inside -> ways.add(present(inside.assembly())));
        return ways;
    }

    private List<Condition> brings(PartNumber part) {
        List<Condition> ways = new ArrayList<>();
        linesOf.getOrDefault(part, List.of()).forEach(line -> ways.add(kit.in(line.name())));
        for (Line line : linesNeeding.getOrDefault(part, List.of())) {
            for (Need need : line.needs()) {
                if (need.part().equals(part)) {
                    ways.add(All.of(kit.in(line.name()), kit.unfolded(need.when())));
                }
            }
        }
        for (PartNumber asker : partsNeeding.getOrDefault(part, List.of())) {
            for (Need need : needsOf(asker)) {
                if (need.part().equals(part)) {
                    ways.add(All.of(present(asker), kit.unfolded(need.when())));
                }
            }
        }
        return ways;
    }

    /** The part's quantity as a sum over conditions; all contributions add. */
    public List<Term> terms(PartNumber part) {
        return terms.of(part);
    }

    private List<Term> sum(PartNumber part) {
        List<Term> sum = new ArrayList<>();
        for (Line line : linesOf.getOrDefault(part, List.of())) {
            add(sum, new Term(line.quantity(), kit.in(line.name())));
        }
        for (Inside inside : insideOf.getOrDefault(part, List.of())) {
            terms(inside.assembly()).forEach(term -> add(sum, term.times(inside.quantity(), Condition.ALWAYS)));
        }
        Map<String, SortedMap<BigDecimal, List<Condition>>> joints = new TreeMap<>();
        for (Asked asked : asked(part)) {
            Condition when = kit.unfolded(asked.need().when());
            if (asked.need().ask() instanceof Need.Each each) {
                asked.terms().forEach(term -> add(sum, term.times(each.quantity(), when)));
            } else if (asked.need().ask() instanceof Need.AtJoint at) {
                joints.computeIfAbsent(at.joint(), joint -> new TreeMap<>())
                        .computeIfAbsent(at.atLeast().stripTrailingZeros(), least -> new ArrayList<>())
                        .add(All.of(asked.present(), when));
            }
        }
        joints.values().forEach(asks -> joint(asks, sum));
        return sum;
    }

    /** The largest ask, once: each step up from one ask to the next, when someone asks for at least that many. */
    private static void joint(SortedMap<BigDecimal, List<Condition>> asks, List<Term> sum) {
        BigDecimal below = BigDecimal.ZERO;
        for (BigDecimal least : asks.keySet()) {
            List<Condition> some =
                    asks.tailMap(least).values().stream().flatMap(List::stream).toList();
            add(sum, new Term(least.subtract(below), Any.of(some), below));
            below = least;
        }
    }

    private List<Asked> asked(PartNumber part) {
        List<Asked> asked = new ArrayList<>();
        for (Line line : linesNeeding.getOrDefault(part, List.of())) {
            Condition in = kit.in(line.name());
            List<Term> own = List.of(new Term(line.quantity(), in));
            line.needs().stream()
                    .filter(need -> need.part().equals(part))
                    .forEach(need -> asked.add(new Asked(own, in, need)));
        }
        for (PartNumber asker : partsNeeding.getOrDefault(part, List.of())) {
            needsOf(asker).stream()
                    .filter(need -> need.part().equals(part))
                    .forEach(need -> asked.add(new Asked(terms(asker), present(asker), need)));
        }
        return asked;
    }

    private static void add(List<Term> sum, Term term) {
        if (!term.when().equals(Any.NEVER)) {
            sum.add(term);
        }
    }

    /** Parts that some line of the family can bring, directly or through others, in the order of their numbers. */
    public List<PartNumber> reachable() {
        Set<PartNumber> all = kit.catalogue().parts().keySet();
        return all.stream()
                .filter(part -> !present(part).equals(Any.NEVER))
                .sorted()
                .toList();
    }
}
