package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Flow;
import boltlore.catalogue.Line;
import boltlore.catalogue.Pack;
import boltlore.catalogue.Port;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.Digits;
import boltlore.proof.KitView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A port on an energy path that is rated for less than flows: between its ends a path passes what the weaker of the two
 * gives or takes, so each port between them bears as much; and each port of the pack's network bears the full pack.
 */
final class WeakPorts {

    /** What a port is rated for. */
    enum Rating {
        VOLTS(" V", joint -> joint.volts()),
        AMPS(" A", joint -> joint.amps()),
        PHASES(" phases", joint -> joint.phases() == null ? null : BigDecimal.valueOf(joint.phases()));

        private final String unit;

        @SuppressWarnings("ImmutableEnumChecker") // looks at a record and holds nothing
        private final Function<Port.Joint, @Nullable BigDecimal> of;

        Rating(String unit, Function<Port.Joint, @Nullable BigDecimal> of) {
            this.unit = unit;
            this.of = of;
        }

        @Nullable
        BigDecimal of(@Nullable Port port) {
            return port == null || port.joint() == null ? null : of.apply(port.joint());
        }

        /** As the sentences count them. */
        int number() {
            return switch (this) {
                case VOLTS -> 0;
                case AMPS -> 1;
                case PHASES -> 2;
            };
        }

        String says(BigDecimal figure) {
            return Digits.plain(figure) + unit;
        }
    }

    private record Weak(Fits.Run run, Line line, Port port, Rating rating) {}

    private record When(Condition when, BigDecimal flows) {}

    private final KitView kit;
    private final Map<Weak, List<When>> weak = new LinkedHashMap<>();

    private WeakPorts(KitView kit) {
        this.kit = kit;
    }

    static List<FitFinding.Possible> findings(KitView kit) {
        WeakPorts ports = new WeakPorts(kit);
        kit.family().fits().runs().forEach(run -> {
            if (!run.closed()) {
                ports.betweenEnds(run);
            }
            if (run.flow() == Flow.HV_DC) {
                ports.underPack(run);
            }
        });
        return ports.weak.entrySet().stream()
                .map(each -> ports.finding(each.getKey(), each.getValue()))
                .toList();
    }

    private void betweenEnds(Fits.Run run) {
        Fits.Step first = run.steps().get(0);
        Fits.Step last = run.steps().get(run.steps().size() - 1);
        for (Line begins : Join.Lines.at(kit, first).toList()) {
            for (Line ends : Join.Lines.at(kit, last).toList()) {
                Condition both = All.of(
                        kit.kit().unfolded(run.required()),
                        kit.kit().in(begins.name()),
                        kit.kit().in(ends.name()));
                for (Rating rating : Rating.values()) {
                    BigDecimal flows = lesser(
                            rating.of(Join.Lines.port(kit, begins, first.out())),
                            rating.of(Join.Lines.port(kit, ends, last.in())));
                    if (flows != null && !both.equals(Any.NEVER)) {
                        run.steps()
                                .subList(1, run.steps().size() - 1)
                                .forEach(step -> held(run, step, rating, flows, both));
                    }
                }
            }
        }
    }

    private static @Nullable BigDecimal lesser(@Nullable BigDecimal left, @Nullable BigDecimal right) {
        if (left == null || right == null) {
            return left == null ? right : left;
        }
        return left.min(right);
    }

    private void underPack(Fits.Run run) {
        for (Pack pack : kit.family().electrics().packs()) {
            Condition when =
                    All.of(kit.kit().unfolded(run.required()), kit.kit().unfolded(pack.when()));
            run.steps().forEach(step -> held(run, step, Rating.VOLTS, pack.highestVolts(), when));
        }
    }

    private void held(Fits.Run run, Fits.Step step, Rating rating, BigDecimal flows, Condition when) {
        Condition passes = All.of(when, kit.kit().unfolded(step.when()));
        for (Line line : Join.Lines.at(kit, step).toList()) {
            Condition there = All.of(passes, kit.kit().in(line.name()));
            Join.Lines.ports(kit, step, line).forEach(port -> {
                BigDecimal rated = rating.of(port);
                if (rated != null && rated.compareTo(flows) < 0 && !there.equals(Any.NEVER)) {
                    weak.computeIfAbsent(new Weak(run, line, port, rating), same -> new ArrayList<>())
                            .add(new When(there, flows));
                }
            });
        }
    }

    private FitFinding.Possible finding(Weak port, List<When> when) {
        BigDecimal most = when.stream().map(When::flows).reduce(BigDecimal.ZERO, BigDecimal::max);
        BigDecimal rated = port.rating().of(port.port());
        return FitFinding.PORT_BELOW_WHAT_FLOWS.when(
                Any.of(when.stream().map(When::when).toList()),
                port.line().name() + "/" + port.port().name(),
                port.run().name() + ", " + port.rating().says(most),
                List.of(port.line().name()),
                "flows",
                plain(most),
                "unit",
                port.rating().number(),
                "port",
                port.port().name(),
                "part",
                BoxContents.named(kit, port.line().part()),
                "run",
                port.run().name(),
                "rated",
                plain(rated == null ? BigDecimal.ZERO : rated));
    }

    private static BigDecimal plain(BigDecimal figure) {
        return new BigDecimal(Digits.plain(figure));
    }
}
