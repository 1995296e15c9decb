package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Flow;
import boltlore.catalogue.Line;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Pack;
import boltlore.catalogue.Port;
import boltlore.catalogue.Role;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.proof.KitView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Inlets, chargers and outlets that can be chosen, and that no energy path joins in those orders: what charging promises would
 * flow through nothing. Of a family that draws no path of that flow nothing is asked.
 */
final class DevicePaths {

    /** Numbers of the devices in the sentence. */
    private static final int INLET = 0;

    private static final int CHARGER = 1;
    private static final int OUTLET = 2;
    private static final int DC_INLET = 3;

    /** A role whose fitted values have such facts; their device is that end of such a run, with such a port. */
    private record Device(
            int number,
            Role role,
            Predicate<Facts> fitted,
            Predicate<Fits.Run> run,
            boolean begins,
            BiPredicate<Port.Joint, Facts> rated) {

        Fits.Step end(Fits.Run of) {
            return begins ? of.steps().get(0) : of.steps().get(of.steps().size() - 1);
        }
    }

    private final KitView kit;
    private final List<Fits.Run> runs;
    private final Set<PositionName> chargers;
    private final Set<PositionName> packs;

    private DevicePaths(KitView kit) {
        this.kit = kit;
        this.runs =
                kit.family().fits().runs().stream().filter(run -> !run.closed()).toList();
        this.chargers = runs.stream()
                .filter(run -> run.flow() == Flow.HV_DC)
                .map(run -> run.steps().get(0).position())
                .filter(first -> runs.stream()
                        .anyMatch(run -> run.flow() == Flow.AC_MAINS
                                && position(run, false).equals(first)))
                .collect(Collectors.toSet());
        this.packs = Stream.concat(
                        runs.stream().filter(run -> run.flow() == Flow.HV_DC).map(run -> position(run, true)),
                        ofModules())
                .collect(Collectors.toSet());
    }

    private Stream<PositionName> ofModules() {
        Set<PartNumber> modules =
                kit.family().electrics().packs().stream().map(Pack::module).collect(Collectors.toSet());
        return kit.family().positions().stream()
                .filter(position -> position.lines().stream().map(Line::part).anyMatch(modules::contains))
                .map(position -> position.name());
    }

    private static PositionName position(Fits.Run run, boolean first) {
        return run.steps().get(first ? 0 : run.steps().size() - 1).position();
    }

    static List<FitFinding.Possible> findings(KitView kit) {
        DevicePaths paths = new DevicePaths(kit);
        return paths.devices().flatMap(paths::of).toList();
    }

    private Stream<Device> devices() {
        return Stream.of(
                new Device(
                        INLET, Role.INLET, facts -> facts.amps() != null, this::charges, true, (port, facts) -> true),
                new Device(
                        CHARGER,
                        Role.CHARGER,
                        facts -> facts.amps() != null,
                        this::charges,
                        false,
                        (port, facts) -> true),
                new Device(
                        OUTLET,
                        Role.EXPORT,
                        facts -> facts.socket() != null,
                        run -> run.flow() == Flow.AC_MAINS && chargers.contains(position(run, true)),
                        false,
                        (port, facts) -> true),
                new Device(
                        DC_INLET,
                        Role.DC_INLET,
                        facts -> facts.volts() != null && facts.amps() != null,
                        run -> run.flow() == Flow.HV_DC && packs.contains(position(run, false)),
                        true,
                        DevicePaths::passes));
    }

    private boolean charges(Fits.Run run) {
        return run.flow() == Flow.AC_MAINS && !chargers.contains(position(run, true));
    }

    private static boolean passes(Port.Joint port, Facts facts) {
        return compared(port.amps(), facts.amps()) == 0 && compared(port.volts(), facts.volts()) >= 0;
    }

    /** As numbers are compared; below where one of them is not known. */
    private static int compared(@Nullable BigDecimal rated, @Nullable BigDecimal said) {
        return rated == null || said == null ? -1 : rated.compareTo(said);
    }

    private Stream<FitFinding.Possible> of(Device device) {
        Flow flow = device.number() == DC_INLET ? Flow.HV_DC : Flow.AC_MAINS;
        return runs.stream().noneMatch(run -> run.flow() == flow)
                ? Stream.empty()
                : kit.family().options().stream()
                        .filter(option -> option.role() == device.role())
                        .flatMap(option -> option.values().stream()
                                .filter(value -> device.fitted().test(value.facts()))
                                .map(value -> without(device, option, value)));
    }

    private FitFinding.Possible without(Device device, Option option, OptionValue value) {
        List<Condition> joined = new ArrayList<>();
        runs.stream().filter(device.run()).forEach(run -> joined(device, run, value, joined));
        Condition chosen = new Condition.Is(option.name(), new TreeSet<>(Set.of(value.value())));
        return FitFinding.DEVICE_WITHOUT_PATH.when(
                All.of(kit.kit().unfolded(chosen), Any.but(Any.of(joined))),
                option.name().text(),
                value.value(),
                List.of(),
                "value",
                value.says(),
                "device",
                device.number());
    }

    private void joined(Device device, Fits.Run run, OptionValue value, List<Condition> joined) {
        Fits.Step end = device.end(run);
        String name = device.begins() ? end.out() : end.in();
        for (Line line : Join.Lines.at(kit, end).toList()) {
            Port port = Join.Lines.port(kit, line, name);
            Port.Joint joint = port == null ? null : port.joint();
            if (joint != null && device.rated().test(joint, value.facts())) {
                joined.add(All.of(
                        kit.kit().unfolded(run.required()),
                        kit.kit().unfolded(end.when()),
                        kit.kit().in(line.name())));
            }
        }
    }
}
