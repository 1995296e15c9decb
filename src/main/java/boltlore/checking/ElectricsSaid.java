package boltlore.checking;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Branch.FedBy;
import boltlore.catalogue.Capacitor;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.ElectricLimits;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Family;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.FusedCircuit;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.Line;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.measure.Digits;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What electrics.json must say, for nothing is held against what it leaves out: where a fuse sits, contacts that are shared, wires. */
final class ElectricsSaid {

    /**
     * A that one core of copper in PVC carries for hours in air of 50 °C, by mm²: table of permissible continuous currents in a
     * handbook of automotive engineering, after DIN VDE 0298-4, from memory; below 1 mm² on with its exponent.
     */
    private static final NavigableMap<BigDecimal, BigDecimal> WIRE_AMPS = new TreeMap<>(Map.ofEntries(
            wire("0.35", "7.4"),
            wire("0.5", "9.1"),
            wire("0.75", "11.5"),
            wire("1", "13.5"),
            wire("1.5", "17"),
            wire("2.5", "22.7"),
            wire("4", "29.8"),
            wire("6", "38.3"),
            wire("10", "51.8"),
            wire("16", "69.6"),
            wire("25", "91.6"),
            wire("35", "112"),
            wire("50", "140")));

    /** Data sheets round. */
    private static final BigDecimal ROUNDED = new BigDecimal("1.05");

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
                        family.electrics().circuits().stream().filter(this::hot).map(this::wire),
                        toChassis(),
                        onTheLink())
                .flatMap(remarks -> remarks);
    }

    /** What is stored to the chassis is added up where there is a limit, and of every device or of none. */
    private Stream<Remark> toChassis() {
        ElectricLimits limits = family.electrics().limits();
        List<Capacitor> capacitors = family.electrics().capacitors();
        boolean limited = limits != null && limits.yJoule() != null;
        boolean some = capacitors.stream().anyMatch(each -> each.yNanofarad() != null);
        Stream<Remark> unknown = capacitors.stream()
                .filter(each -> each.yNanofarad() == null && (limited || some))
                .map(each -> missing(
                        each.name(),
                        "no 'yNanofarad'",
                        "its Y capacitors, for their energy has a limit or is added up"));
        return some && !limited
                ? Stream.concat(
                        unknown, Stream.of(missing("limits", "no 'yJoule'", "a limit of what the Y capacitors hold")))
                : unknown;
    }

    /** A device on direct current fills when the contactors close: each is known to the precharge, or none. */
    private Stream<Remark> onTheLink() {
        Electrics electrics = family.electrics();
        boolean open = electrics.capacitors().stream().anyMatch(each -> each.branch() == null);
        if (open || electrics.resistors().isEmpty()) {
            return Stream.empty();
        }
        Set<PositionName> filled = electrics.branches().stream()
                .filter(branch -> electrics.capacitors().stream()
                        .anyMatch(each -> branch.name().equals(each.branch())))
                .map(Branch::position)
                .collect(Collectors.toSet());
        return electrics.branches().stream()
                .filter(branch -> branch.fedBy() instanceof FedBy.Pack && branch.feeds() instanceof Feeds.Device)
                .filter(branch -> !filled.contains(branch.position()))
                .map(branch -> missing(
                        branch.name(),
                        "no capacitor of the device at its end",
                        "what the precharge resistor fills there, under 'capacitors'"));
    }

    private Remark missing(String name, String found, String expected) {
        return new Remark(
                "electrics " + family.name() + "/" + name,
                Check.ELECTRICS_MISSING,
                found,
                expected,
                "Take it from the maker's data sheet");
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

    private static Map.Entry<BigDecimal, BigDecimal> wire(String mm2, String amps) {
        return Map.entry(new BigDecimal(mm2), new BigDecimal(amps));
    }

    /** Of the next larger wire in the table; of none where it is larger than all. */
    private static @Nullable BigDecimal mostAmps(FusedCircuit circuit) {
        Map.Entry<BigDecimal, BigDecimal> wire = WIRE_AMPS.ceilingEntry(circuit.wireMm2());
        return wire == null ? null : wire.getValue();
    }

    private boolean hot(FusedCircuit circuit) {
        BigDecimal most = mostAmps(circuit);
        return most != null && circuit.wireAmps().compareTo(most.multiply(ROUNDED)) > 0;
    }

    private Remark wire(FusedCircuit circuit) {
        return new Remark(
                "circuit " + family.name() + "/" + circuit.name(),
                Check.CABLE_FACTS,
                "'wireAmps' " + Digits.plain(circuit.wireAmps()) + " of " + Digits.plain(circuit.wireMm2()) + " mm²",
                "at most " + mostAmps(circuit)
                        + " A for hours: a core of a loom at 50 °C (workshop's own value, check before use)",
                "Take it from the maker's data sheet for how the wire lies in its loom");
    }
}
