package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.PieceCounts;
import boltlore.catalogue.Position;
import boltlore.catalogue.Role;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** All that must hold between the records of a catalogue. */
final class CrossChecks {

    private CrossChecks() {}

    static void all(Catalogue catalogue, Reading reading) {
        boolean readable = reading.faults().none();
        Set<Kind> unknown = reading.names().compare(reading.faults());
        PartGraph graph = PartGraph.of(catalogue);
        boolean loops = new PartLoops(catalogue, graph, reading).check();
        new WholeQuantities(catalogue, reading).check();
        new WeldedCoats(catalogue, reading).check();
        new Supersession(catalogue, reading).check();
        for (Family family : catalogue.families().values()) {
            roles(family, reading);
            new PositionLoops(family, reading).check();
            holdingCheck(family, reading);
            StationsCheck.check(family, reading);
            StationsCheck.concentrates(family, catalogue.parts(), reading);
            TestsCheck.check(family, reading);
            Set<PartNumber> reach = graph.with(family).reach(family);
            new PairsCheck(catalogue, reading).check(family, reach);
            new FinishRoles(catalogue, reading).check(family, reach);
        }
        // What could not be read may be just what would have used a part or shared a joint, or the bars that would have
        // been long enough.
        if (readable) {
            // A name that is mistyped where it is used is told once, and not what else comes of it.
            if (!unknown.contains(Kind.MATERIAL) && !unknown.contains(Kind.SAW)) {
                making(catalogue, graph, reading);
            }
            if (!loops) {
                catalogue.families().values().forEach(family -> pieces(catalogue, family, reading));
            }
            catalogue.families().values().forEach(family -> SharedJointsCheck.check(catalogue, family, reading));
            ofWorkshop(catalogue, reading);
            if (!unknown.contains(Kind.PART)) {
                UnusedParts.check(catalogue, reading);
            }
            OwnCrateCheck.check(catalogue, reading);
        }
    }

    private static void ofWorkshop(Catalogue catalogue, Reading reading) {
        PricingCheck.check(catalogue, reading);
        CapacityFile.check(catalogue, reading);
        OfferReading.rates(catalogue, reading);
    }

    private static void making(Catalogue catalogue, PartGraph graph, Reading reading) {
        new SawnPieces(catalogue, reading).check();
        new BentBlanks(catalogue, reading).check();
        MeasuresCheck measures = new MeasuresCheck(catalogue, reading);
        measures.parts();
        catalogue
                .families()
                .values()
                .forEach(family -> measures.check(family, graph.with(family).reach(family)));
    }

    private static void pieces(Catalogue catalogue, Family family, Reading reading) {
        PieceCounts counts = new PieceCounts(catalogue.parts(), family);
        family.lines()
                .filter(line -> counts.tooMany(line.part(), line.quantity()))
                .forEach(line -> reading.faults()
                        .add(reading.sources()
                                .of(line)
                                .fault(
                                        line.quantity().toPlainString() + " of " + line.part()
                                                + " with all that comes with them",
                                        "at most " + PieceCounts.MOST + " pieces by one line",
                                        "Check the quantities here and inside the part.")));
    }

    private static void roles(Family family, Reading reading) {
        Set<Role> taken = EnumSet.noneOf(Role.class);
        for (Option option : family.options()) {
            if (option.role() != null && !taken.add(option.role())) {
                roleAgain(option, option.role(), reading);
            }
        }
    }

    private static void roleAgain(Option option, Role role, Reading reading) {
        reading.faults()
                .add(reading.sources()
                        .of(option)
                        .fault(
                                "role '" + role.written() + "' a second time",
                                "one option in each role",
                                "Remove the role from one of them."));
    }

    /** A position can only be held by lines that carry it, and needs each list of them said once. */
    private static void holdingCheck(Family family, Reading reading) {
        Map<PositionName, List<LineName>> carriers = Holding.carriers(family.positions());
        for (Position position : family.positions()) {
            List<LineName> carrying = carriers.getOrDefault(position.name(), List.of());
            position.heldBy().stream()
                    .flatMap(List::stream)
                    .filter(line -> !carrying.contains(line))
                    .filter(line -> reading.names().knows(Kind.LINE, family.name(), line.text()))
                    .forEach(line -> reading.faults()
                            .add(reading.sources()
                                    .of(line)
                                    .fault(
                                            "'" + line + "', which does not carry '" + position.name() + "'",
                                            carrying.isEmpty()
                                                    ? "a line that carries it; none does"
                                                    : "one of " + joined(carrying),
                                            "Add the position to that line's 'carries'.")));
            saidOnce(position, reading);
        }
    }

    private static void saidOnce(Position position, Reading reading) {
        Set<Set<LineName>> met = new HashSet<>();
        for (List<LineName> brackets : position.heldBy()) {
            if (!brackets.isEmpty() && !met.add(Set.copyOf(brackets))) {
                reading.faults()
                        .add(reading.sources()
                                .of(brackets.get(0))
                                .fault(
                                        "the same list of brackets again: " + joined(brackets),
                                        "each list once",
                                        "Remove one of the two, or name the brackets that are meant."));
            }
        }
    }

    private static String joined(List<LineName> lines) {
        return lines.stream().map(LineName::text).collect(Collectors.joining(", "));
    }
}
