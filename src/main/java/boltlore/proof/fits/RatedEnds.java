package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.DirectLimit;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Flow;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.Line;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Port;
import boltlore.catalogue.Role;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.Digits;
import boltlore.measure.PositionName;
import boltlore.proof.KitView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The ports of inlet, charger and outlet against what the options and electrics.json say of the same device: charging power,
 * cable and fuse are worked out from the latter, so a port that is rated for another current shows that one of the two is
 * not the device's own.
 */
final class RatedEnds {

    /** What a device is said to be rated for, and when. */
    private record Declared(
            Condition when,
            int device,
            @Nullable BigDecimal amps,
            @Nullable BigDecimal volts,
            @Nullable Integer phases) {}

    /** A device's port at the end of a path. */
    private record End(Line line, String port, int device, Condition when) {}

    private final KitView kit;
    private final Set<PositionName> mainsEnd;
    private final Set<PositionName> mainsBegin;
    private final List<FitFinding.Possible> found = new ArrayList<>();
    private final Set<List<Object>> told = new HashSet<>();

    private RatedEnds(KitView kit) {
        this.kit = kit;
        this.mainsEnd = ends(kit, RatedEnds::last);
        this.mainsBegin = ends(kit, RatedEnds::first);
    }

    private static Set<PositionName> ends(KitView kit, Function<Fits.Run, Fits.Step> end) {
        return kit.family().fits().runs().stream()
                .filter(run -> run.flow() == Flow.AC_MAINS && !run.closed())
                .map(end)
                .map(Fits.Step::position)
                .collect(Collectors.toSet());
    }

    private static Fits.Step first(Fits.Run run) {
        return run.steps().get(0);
    }

    private static Fits.Step last(Fits.Run run) {
        return run.steps().get(run.steps().size() - 1);
    }

    static List<FitFinding.Possible> findings(KitView kit) {
        RatedEnds ends = new RatedEnds(kit);
        kit.family().fits().runs().stream().filter(run -> !run.closed()).forEach(ends::compare);
        return List.copyOf(ends.found);
    }

    private void compare(Fits.Run run) {
        boolean fromCharger = mainsEnd.contains(first(run).position());
        if (run.flow() == Flow.AC_MAINS && fromCharger) {
            compare(run, last(run), last(run).in(), of(Role.EXPORT, 2));
        } else if (run.flow() == Flow.AC_MAINS) {
            compare(run, first(run), first(run).out(), of(Role.INLET, 0));
            compare(run, last(run), last(run).in(), of(Role.CHARGER, 1));
        } else if (run.flow() == Flow.HV_DC
                && !fromCharger
                && mainsBegin.contains(first(run).position())) {
            compare(run, first(run), first(run).out(), direct());
        }
    }

    private List<Declared> of(Role role, int device) {
        return kit.family().options().stream()
                .filter(option -> option.role() == role)
                .flatMap(option -> option.values().stream().map(value -> declared(option, value, device)))
                .toList();
    }

    private static Declared declared(Option option, OptionValue value, int device) {
        Facts facts = value.facts();
        return new Declared(
                new Condition.Is(option.name(), new TreeSet<>(Set.of(value.value()))),
                device,
                facts.amps(),
                device == 1 ? null : facts.volts(),
                facts.phases());
    }

    private List<Declared> direct() {
        return kit.family().electrics().inlets().stream()
                .filter(inlet -> inlet.direct() != null)
                .map(RatedEnds::direct)
                .toList();
    }

    private static Declared direct(InletWiring inlet) {
        DirectLimit limit = inlet.direct();
        return new Declared(
                inlet.when(), 3, limit == null ? null : limit.amps(), limit == null ? null : limit.volts(), null);
    }

    private void compare(Fits.Run run, Fits.Step step, String name, List<Declared> all) {
        for (Line line : Join.Lines.at(kit, step).toList()) {
            Port port = Join.Lines.port(kit, line, name);
            Port.Joint joint = port == null ? null : port.joint();
            if (joint == null) {
                continue;
            }
            for (Declared declared : all) {
                Condition when = All.of(
                        kit.kit().unfolded(run.required()),
                        kit.kit().unfolded(step.when()),
                        kit.kit().in(line.name()),
                        kit.kit().unfolded(declared.when()));
                End end = new End(line, name, declared.device(), when);
                unlike(end, WeakPorts.Rating.AMPS, joint.amps(), declared.amps());
                unlike(end, WeakPorts.Rating.VOLTS, joint.volts(), declared.volts());
                unlike(end, WeakPorts.Rating.PHASES, number(joint.phases()), number(declared.phases()));
            }
        }
    }

    private static @Nullable BigDecimal number(@Nullable Integer whole) {
        return whole == null ? null : BigDecimal.valueOf(whole);
    }

    /** A port may be insulated for more than its device is used at; its current and phases are the device's own. */
    private void unlike(End end, WeakPorts.Rating rating, @Nullable BigDecimal rated, @Nullable BigDecimal declared) {
        if (rated == null || declared == null || end.when().equals(Any.NEVER)) {
            return;
        }
        int compared = rated.compareTo(declared);
        boolean unlike = rating == WeakPorts.Rating.VOLTS ? compared < 0 : compared != 0;
        if (unlike && told.add(List.of(end, rating, declared))) {
            found.add(FitFinding.PORT_UNLIKE_ITS_DEVICE.when(
                    end.when(),
                    end.line().name() + "/" + end.port(),
                    rating.says(declared),
                    List.of(end.line().name()),
                    "port",
                    end.port(),
                    "part",
                    BoxContents.named(kit, end.line().part()),
                    "rated",
                    new BigDecimal(Digits.plain(rated)),
                    "unit",
                    rating.number(),
                    "device",
                    end.device(),
                    "declared",
                    new BigDecimal(Digits.plain(declared))));
        }
    }
}
