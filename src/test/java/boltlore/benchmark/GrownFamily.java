package boltlore.benchmark;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.catalogue.Position;
import boltlore.catalogue.Route;
import boltlore.catalogue.Structure;
import boltlore.catalogue.Upkeep;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The demo family grown by copies of itself, with positions, lines and parts of their own, up to a number of lines. */
final class GrownFamily {

    private final String suffix;

    private GrownFamily(int copy) {
        this.suffix = copy == 0 ? "" : "-" + copy;
    }

    /** A catalogue whose one family has the options and limits of the given one and that many lines, at the most. */
    static Catalogue of(Catalogue catalogue, String name, int lines) {
        Family family = catalogue.family(name);
        List<Position> positions = new ArrayList<>();
        List<Companion> companions = new ArrayList<>();
        Map<PartNumber, Part> parts = new TreeMap<>();
        int count = 0;
        for (int copy = 0; count < lines; copy++) {
            GrownFamily grown = new GrownFamily(copy);
            for (Position position : family.positions()) {
                if (count + position.lines().size() <= lines) {
                    positions.add(grown.position(position));
                }
                count += position.lines().size();
            }
            family.companions().forEach(companion -> companions.add(grown.companion(companion)));
            catalogue.parts().values().forEach(part -> {
                Part own = grown.part(part);
                parts.put(own.number(), own);
            });
        }
        Family large = new Family(
                name,
                family.says(),
                family.donor(),
                family.options(),
                family.limits(),
                family.finishes(),
                family.pairs(),
                positions,
                companions);
        return new Catalogue(
                catalogue.workshop(), catalogue.finishes(), catalogue.materials(), parts, Map.of(name, large), "grown");
    }

    private PositionName at(PositionName position) {
        return new PositionName(position.text() + suffix);
    }

    private LineName line(LineName line) {
        return new LineName(line.text() + suffix);
    }

    private PartNumber part(PartNumber part) {
        return new PartNumber(part.text() + suffix);
    }

    private Position position(Position it) {
        return new Position(
                at(it.name()),
                it.says(),
                it.subSystem(),
                it.stage(),
                it.bag(),
                it.under() == null ? null : at(it.under()),
                it.fill(),
                it.due() == null ? null : when(it.due()),
                it.heldBy().stream()
                        .map(list -> list.stream().map(this::line).toList())
                        .toList(),
                it.routes().stream()
                        .map(route -> new Route(when(route.when()), route.needsMm(), route.slackMm()))
                        .toList(),
                it.lines().stream().map(this::line).toList());
    }

    private Line line(Line it) {
        return new Line(
                line(it.name()),
                part(it.part()),
                it.quantity(),
                when(it.when()),
                it.carries().stream().map(this::at).toList(),
                needs(it.needs()),
                expects(it.expects()),
                it.note());
    }

    private List<Need> needs(List<Need> needs) {
        return needs.stream()
                .map(need -> new Need(part(need.part()), need.ask(), when(need.when()), need.because()))
                .toList();
    }

    private List<Expectation> expects(List<Expectation> expects) {
        return expects.stream()
                .map(it -> new Expectation(target(it.target()), it.atLeast(), when(it.when()), it.because()))
                .toList();
    }

    private Expectation.Target target(Expectation.Target target) {
        return target instanceof Expectation.OfPart of
                ? new Expectation.OfPart(part(of.part()))
                : new Expectation.OfPosition(at(((Expectation.OfPosition) target).position()));
    }

    private Companion companion(Companion it) {
        return new Companion(part(it.part()), needs(it.needs()), expects(it.expects()));
    }

    private Condition when(Condition condition) {
        if (condition instanceof Condition.Filled filled) {
            return new Condition.Filled(at(filled.position()));
        }
        if (condition instanceof Condition.Not not) {
            return new Condition.Not(when(not.condition()));
        }
        if (condition instanceof Condition.All all) {
            return new Condition.All(all.conditions().stream().map(this::when).toList());
        }
        if (condition instanceof Condition.AnyOf any) {
            return new Condition.AnyOf(any.conditions().stream().map(this::when).toList());
        }
        return condition;
    }

    private Part part(Part it) {
        Structure inside = new Structure(
                it.contains().stream()
                        .map(child -> new Contained(part(child.part()), child.quantity()))
                        .toList(),
                it.structure().joined(),
                it.structure().stocked(),
                it.structure().weighedKg());
        return new Part(
                part(it.number()),
                it.revision(),
                it.name(),
                it.unit(),
                it.source(),
                it.cost(),
                it.scrapPercent(),
                it.massKg(),
                it.leadDays(),
                it.bin(),
                it.tracked(),
                it.buying(),
                inside,
                it.making(),
                needs(it.needs()),
                it.coat(),
                it.lengthMm(),
                it.fixing(),
                it.holes(),
                it.handed(),
                it.ports().stream().map(this::port).toList(),
                it.cautions(),
                it.traits(),
                it.customs(),
                it.transport(),
                it.service(),
                it.geometry(),
                Upkeep.NONE);
    }

    private Port port(Port it) {
        return new Port(
                it.name(),
                it.kind(),
                it.mates().stream().map(this::part).toList(),
                it.blank() == null ? null : part(it.blank()));
    }
}
