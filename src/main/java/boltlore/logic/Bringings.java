package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.measure.PartNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** All ways in which parts come into a family's kits, by the part they bring. */
public final class Bringings {

    private final KitConditions kit;
    private final PartConditions parts;
    private final Map<PartNumber, List<Bringing>> byPart = new TreeMap<>();

    public Bringings(KitConditions kit, PartConditions parts) {
        this.kit = kit;
        this.parts = parts;
        kit.family().lines().forEach(this::line);
        List<PartNumber> open = new ArrayList<>(byPart.keySet());
        while (!open.isEmpty()) {
            PartNumber asker = open.remove(open.size() - 1);
            for (PartNumber brought : part(asker)) {
                open.add(brought);
            }
        }
    }

    private void line(Line line) {
        Condition in = kit.in(line.name());
        add(new Bringing(Bringing.How.LINE, line.name(), null, line.part(), in));
        for (Need need : line.needs()) {
            Condition when = All.of(in, kit.unfolded(need.when()));
            add(new Bringing(Bringing.How.NEEDS, line.name(), null, need.part(), when));
        }
    }

    /** Parts that are met here for the first time. */
    private List<PartNumber> part(PartNumber asker) {
        List<PartNumber> met = new ArrayList<>();
        for (Contained child : kit.catalogue().part(asker).contains()) {
            if (add(new Bringing(Bringing.How.CONTAINS, null, asker, child.part(), parts.present(asker)))) {
                met.add(child.part());
            }
        }
        for (Need need : parts.needsOf(asker)) {
            Condition when = All.of(parts.present(asker), kit.unfolded(need.when()));
            if (add(new Bringing(Bringing.How.NEEDS, null, asker, need.part(), when))) {
                met.add(need.part());
            }
        }
        return met;
    }

    private boolean add(Bringing bringing) {
        List<Bringing> ways = byPart.computeIfAbsent(bringing.part(), part -> new ArrayList<>());
        ways.add(bringing);
        return ways.size() == 1;
    }

    /** Parts that lines, assemblies and needs of the family name, in the order of their numbers. */
    public List<PartNumber> parts() {
        return List.copyOf(byPart.keySet());
    }

    public List<Bringing> of(PartNumber part) {
        return byPart.getOrDefault(part, List.of());
    }
}
