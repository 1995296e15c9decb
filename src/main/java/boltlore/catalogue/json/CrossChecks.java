package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.PieceCounts;
import boltlore.catalogue.Role;
import boltlore.measure.PartNumber;
import java.util.EnumSet;
import java.util.Set;

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
        for (Family family : catalogue.families().values()) {
            roles(family, reading);
            new PositionLoops(family, reading).check();
            HoldingCheck.check(family, reading);
            StationsCheck.check(family, reading);
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
                making(catalogue, reading);
            }
            if (!loops) {
                catalogue.families().values().forEach(family -> pieces(catalogue, family, reading));
            }
            catalogue.families().values().forEach(family -> SharedJointsCheck.check(catalogue, family, reading));
            PricingCheck.check(catalogue, reading);
            if (!unknown.contains(Kind.PART)) {
                UnusedParts.check(catalogue, reading);
            }
            OwnCrateCheck.check(catalogue, reading);
        }
    }

    private static void making(Catalogue catalogue, Reading reading) {
        new SawnPieces(catalogue, reading).check();
        new BentBlanks(catalogue, reading).check();
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
}
