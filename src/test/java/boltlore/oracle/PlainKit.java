package boltlore.oracle;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.resolution.Reason;
import boltlore.resolution.Requirer;
import boltlore.resolution.Way;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Which parts are in, how many, and why: each part asks who brings it. */
final class PlainKit {

    /** An ask for a part: by a line in the kit, or by another part, which may not be in the kit. */
    private record Ask(Requirer asker, Way way, BigDecimal times, String joint, BigDecimal atLeast) {}

    final PlainChoice choice;
    final Family family;
    private final Catalogue catalogue;
    private final Set<LineName> leftOut;
    private final Map<PartNumber, List<Ask>> asks = new HashMap<>();
    private final Map<PartNumber, BigDecimal> quantities = new HashMap<>();

    PlainKit(Catalogue catalogue, Family family, PlainChoice choice, Set<LineName> leftOut) {
        this.catalogue = catalogue;
        this.family = family;
        this.choice = choice;
        this.leftOut = leftOut;
        family.lines().filter(this::in).forEach(this::lineAsks);
        catalogue.parts().values().forEach(this::partAsks);
    }

    Part part(PartNumber number) {
        return catalogue.part(number);
    }

    boolean in(Line line) {
        return choice.called(line) && !leftOut.contains(line.name());
    }

    SortedSet<LineName> linesIn() {
        SortedSet<LineName> lines = new TreeSet<>();
        family.lines().filter(this::in).forEach(line -> lines.add(line.name()));
        return lines;
    }

    int linesIn(Position position) {
        return (int) position.lines().stream().filter(this::in).count();
    }

    private void lineAsks(Line line) {
        Requirer asker = new Requirer.OfLine(line.name());
        ask(line.part(), new Ask(asker, Way.LINE, line.quantity(), "", BigDecimal.ZERO));
        line.needs().forEach(need -> need(asker, line.quantity(), need));
    }

    private void partAsks(Part part) {
        Requirer asker = new Requirer.OfPart(part.number());
        for (Contained child : part.contains()) {
            ask(child.part(), new Ask(asker, Way.CONTAINS, child.quantity(), "", BigDecimal.ZERO));
        }
        part.needs().forEach(need -> need(asker, BigDecimal.ONE, need));
        for (Companion companion : family.companions()) {
            if (companion.part().equals(part.number())) {
                companion.needs().forEach(need -> need(asker, BigDecimal.ONE, need));
            }
        }
    }

    private void need(Requirer asker, BigDecimal askers, Need need) {
        if (!choice.holds(need.when())) {
            return;
        }
        if (need.ask() instanceof Need.Each each) {
            BigDecimal times = askers.multiply(each.quantity());
            ask(need.part(), new Ask(asker, Way.NEEDS, times, "", BigDecimal.ZERO));
        } else {
            Need.AtJoint at = (Need.AtJoint) need.ask();
            ask(need.part(), new Ask(asker, Way.NEEDS, BigDecimal.ZERO, at.joint(), at.atLeast()));
        }
    }

    private void ask(PartNumber part, Ask ask) {
        asks.computeIfAbsent(part, number -> new ArrayList<>()).add(ask);
    }

    /** 0 where the part is not in the kit. */
    BigDecimal quantity(PartNumber part) {
        BigDecimal known = quantities.get(part);
        if (known != null) {
            return known;
        }
        BigDecimal sum = BigDecimal.ZERO;
        Map<String, BigDecimal> largest = new TreeMap<>();
        for (Ask ask : asks.getOrDefault(part, List.of())) {
            BigDecimal askers = askers(ask);
            if (askers.signum() > 0 && ask.joint().isEmpty()) {
                sum = sum.add(askers.multiply(ask.times()));
            } else if (askers.signum() > 0) {
                largest.merge(ask.joint(), ask.atLeast(), BigDecimal::max);
            }
        }
        for (BigDecimal atLeast : largest.values()) {
            sum = sum.add(atLeast);
        }
        quantities.put(part, sum);
        return sum;
    }

    /** What lines and needs bring of it; without what comes inside assemblies. */
    BigDecimal brought(PartNumber part) {
        BigDecimal inside = BigDecimal.ZERO;
        for (Ask ask : asks.getOrDefault(part, List.of())) {
            if (ask.way() == Way.CONTAINS) {
                inside = inside.add(askers(ask).multiply(ask.times()));
            }
        }
        return quantity(part).subtract(inside);
    }

    private BigDecimal askers(Ask ask) {
        return ask.asker() instanceof Requirer.OfPart of ? quantity(of.part()) : BigDecimal.ONE;
    }

    boolean has(PartNumber part) {
        return quantity(part).signum() > 0;
    }

    /** All parts of the kit. */
    SortedMap<PartNumber, BigDecimal> quantities() {
        SortedMap<PartNumber, BigDecimal> all = new TreeMap<>();
        for (PartNumber part : asks.keySet()) {
            if (has(part)) {
                all.put(part, quantity(part));
            }
        }
        return all;
    }

    SortedSet<Reason> reasons() {
        SortedSet<Reason> reasons = new TreeSet<>();
        asks.keySet().forEach(part -> reasons.addAll(reasons(part)));
        return reasons;
    }

    List<Reason> reasons(PartNumber part) {
        return asks.getOrDefault(part, List.of()).stream()
                .filter(ask -> askers(ask).signum() > 0)
                .map(ask -> new Reason(ask.asker(), ask.way(), part))
                .toList();
    }
}
