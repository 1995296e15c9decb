package boltlore.resolution;

import boltlore.catalogue.BottomUp;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.order.Order;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What a family's resolutions share, worked out once: its lines by name, its reachable parts, who needs what. */
public final class FamilyPlan {

    private final Catalogue catalogue;
    private final Family family;
    private final Map<LineName, Line> lines = new HashMap<>();
    private final Map<LineName, Position> positions = new HashMap<>();
    private final Map<PartNumber, List<Need>> needs = new HashMap<>();
    private final Map<PartNumber, List<Expectation>> expects = new HashMap<>();
    private final List<PartNumber> askersFirst;

    public FamilyPlan(Catalogue catalogue, Family family) {
        this.catalogue = catalogue;
        this.family = family;
        for (Position position : family.positions()) {
            for (Line line : position.lines()) {
                lines.put(line.name(), line);
                positions.put(line.name(), position);
            }
        }
        for (Companion companion : family.companions()) {
            needs.computeIfAbsent(companion.part(), part -> new ArrayList<>()).addAll(companion.needs());
            expects.computeIfAbsent(companion.part(), part -> new ArrayList<>()).addAll(companion.expects());
        }
        Map<PartNumber, PartNumber> askedFirst = new LinkedHashMap<>();
        BottomUp<PartNumber, PartNumber> visits = new BottomUp<>(askedFirst, this::askedBy, part -> part);
        family.lines().forEach(line -> {
            visits.of(line.part());
            line.needs().forEach(need -> visits.of(need.part()));
        });
        List<PartNumber> order = new ArrayList<>(askedFirst.keySet());
        Collections.reverse(order);
        this.askersFirst = List.copyOf(order);
        askersFirst.forEach(part -> needs.put(part, allNeeds(part)));
    }

    /** The plan for one vehicle, whose measured dimensions decide how long some parts are. */
    public FamilyPlan measured(Order order) {
        return family.measures().isEmpty()
                ? this
                : new FamilyPlan(catalogue.measured(family, order.measuredMm()), family);
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    public Family family() {
        return family;
    }

    public Part part(PartNumber number) {
        return catalogue.part(number);
    }

    public Line line(LineName name) {
        Line line = lines.get(name);
        if (line == null) {
            throw new IllegalArgumentException("No line " + name + " in family " + family.name());
        }
        return line;
    }

    public Position positionOf(LineName name) {
        Position position = positions.get(name);
        if (position == null) {
            throw new IllegalArgumentException("No line " + name + " in family " + family.name());
        }
        return position;
    }

    /** Parts that some line can bring, each after all that contain or need it. */
    public List<PartNumber> askersFirst() {
        return askersFirst;
    }

    /** What the part needs in this family: by itself, then as the family's companions say. */
    public List<Need> needsOf(PartNumber part) {
        return needs.getOrDefault(part, List.of());
    }

    public List<Expectation> expectsOf(PartNumber part) {
        return expects.getOrDefault(part, List.of());
    }

    private List<Need> allNeeds(PartNumber part) {
        return Stream.concat(part(part).needs().stream(), needs.getOrDefault(part, List.of()).stream())
                .toList();
    }

    /** What the part contains and needs. */
    private List<PartNumber> askedBy(PartNumber number) {
        return Stream.of(
                        part(number).contains().stream().map(Contained::part),
                        part(number).needs().stream().map(Need::part),
                        needs.getOrDefault(number, List.of()).stream().map(Need::part))
                .flatMap(parts -> parts)
                .toList();
    }
}
