package boltlore.checking;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Branch.FedBy;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.FusedCircuit;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.Line;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.measure.Digits;
import java.util.List;
import java.util.stream.Stream;

/** What electrics.json must say, for nothing is held against what it leaves out: where a fuse sits, contacts that are shared, wires. */
final class ElectricsSaid {

    /** Insulation of vehicle wires of the usual class, in °C (ISO 19642, class C: 125 °C); from memory. */
    private static final int WIRE_C = 125;

    private final Catalogue catalogue;
    private final Family family;
    private final Together together;

    private ElectricsSaid(Catalogue catalogue, Family family) {
        this.catalogue = catalogue;
        this.family = family;
        this.together = new Together(family);
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> new ElectricsSaid(catalogue, family).all());
    }

    private Stream<Remark> all() {
        return Stream.of(
                        family.electrics().branches().stream()
                                .filter(ElectricsSaid::unsaid)
                                .map(this::fuseSomewhere),
                        family.electrics().inlets().stream().flatMap(this::inlet),
                        family.electrics().circuits().stream().filter(this::hot).map(this::wire))
                .flatMap(remarks -> remarks);
    }

    /** A battery shorts into every millimetre before the fuse. */
    private static boolean unsaid(Branch branch) {
        Branch.Protection.Fuse fuse = branch.protection().fuse();
        boolean battery = branch.fedBy() instanceof FedBy.Pack || branch.fedBy() instanceof FedBy.LowVoltage;
        return battery && fuse != null && fuse.afterMm() == null;
    }

    private Remark fuseSomewhere(Branch branch) {
        return new Remark(
                "branch " + family.name() + "/" + branch.name(),
                Check.FUSE_SOMEWHERE,
                "no 'fuseAfterMm'",
                "how many mm of conductor lie between the battery and the fuse: nothing protects them",
                "Measure it and add it; 0 where the fuse sits in the box that feeds the branch");
    }

    private Stream<Remark> inlet(InletWiring inlet) {
        List<Line> lines = family.lines()
                .filter(line -> together.canHold(line.when(), inlet.when()))
                .toList();
        List<Part> sharing = lines.stream()
                .map(line -> catalogue.part(line.part()))
                .filter(part -> part.ports().stream().map(Port::shares).anyMatch(other -> !other.isEmpty()))
                .filter(part -> !onlyBeside(inlet, part))
                .toList();
        if (sharing.isEmpty() != inlet.sharedPins()) {
            return Stream.empty();
        }
        return Stream.of(new Remark(
                "inlet " + family.name(),
                Check.SHARED_PINS,
                inlet.sharedPins()
                        ? "'sharedPins', and no inlet whose ports say which contacts they share"
                        : "no 'sharedPins', and " + sharing.get(0).number()
                                + " whose ports share contacts for alternating and direct current",
                "the same of the inlet's wiring and of its part",
                inlet.sharedPins()
                        ? "Add 'shares' to the port of the part, or leave 'sharedPins' out"
                        : "Add 'sharedPins' and 'isolatedBy' to the inlet in electrics.json: direct current would reach"
                                + " the charger"));
    }

    /** Whether another piece of wiring speaks of that part, and this one stands in none of its orders. */
    private boolean onlyBeside(InletWiring inlet, Part part) {
        List<Condition> fitted = family.lines()
                .filter(line -> line.part().equals(part.number()))
                .map(Line::when)
                .toList();
        return !together.canHold(new Condition.AnyOf(fitted), inlet.when());
    }

    private boolean hot(FusedCircuit circuit) {
        return circuit.wireAmps().compareTo(CableFacts.mostAmps(circuit.wireMm2(), WIRE_C)) > 0;
    }

    private Remark wire(FusedCircuit circuit) {
        return new Remark(
                "circuit " + family.name() + "/" + circuit.name(),
                Check.CABLE_FACTS,
                "'wireAmps' " + Digits.plain(circuit.wireAmps()) + " of " + Digits.plain(circuit.wireMm2()) + " mm²",
                "at most " + CableFacts.mostAmps(circuit.wireMm2(), WIRE_C)
                        + " A: a single core alone in air of 30 °C (workshop's own value, check before use)",
                "Take it from the maker's data sheet for how the wire lies in its loom");
    }
}
