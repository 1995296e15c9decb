package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.Flow;
import boltlore.catalogue.FusedCircuit;
import boltlore.catalogue.LowVoltage;
import boltlore.catalogue.Position;
import boltlore.logic.All;
import boltlore.measure.Digits;
import boltlore.measure.PositionName;
import boltlore.proof.KitView;
import boltlore.proof.fits.BranchWays.Origin;
import boltlore.proof.fits.BranchWays.Way;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Fused circuits of the 12 V network against the branch that feeds them: together they draw no more than it is reckoned with. */
record BranchCircuits(KitView kit, List<Way> ways, BranchPowers.Adder adder) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** At most so many of those that one branch feeds are added up in all ways; of more, each is looked at alone. */
    private static final int MANY = 10;

    void behind(Way way, Feeds.Device device) {
        Electrics electrics = kit.family().electrics();
        LowVoltage network = electrics.lowVoltage();
        if (way.flow() != Flow.TWELVE_VOLT || way.origin() != Origin.STORE || network == null) {
            return;
        }
        BigDecimal volts = device.atVolts() == null ? network.lowestVolts() : device.atVolts();
        BigDecimal amps = device.watts()
                .multiply(HUNDRED)
                .divide(device.efficiencyPercent().multiply(volts), MathContext.DECIMAL32);
        List<FusedCircuit> fed = electrics.circuits().stream()
                .filter(circuit -> alone() || under(circuit.position(), way.ends()))
                .toList();
        for (List<FusedCircuit> some : least(fed, all -> load(all).compareTo(amps) > 0)) {
            add(way, device, amps, some);
        }
    }

    /** All paths of that network that leave the battery end at the same place. */
    private boolean alone() {
        return ways.stream()
                        .filter(way -> way.flow() == Flow.TWELVE_VOLT && way.origin() == Origin.STORE)
                        .filter(way -> way.next().isEmpty())
                        .map(Way::ends)
                        .distinct()
                        .count()
                == 1;
    }

    private boolean under(@Nullable PositionName name, PositionName feeder) {
        if (name == null || name.equals(feeder)) {
            return name != null;
        }
        Position position = kit.kit().position(name);
        return under(position.under(), feeder);
    }

    /** The smallest sets of which that is so: what holds of one holds of all that have it in them. */
    private static List<List<FusedCircuit>> least(List<FusedCircuit> all, Predicate<List<FusedCircuit>> so) {
        List<List<FusedCircuit>> found = new ArrayList<>();
        List<List<FusedCircuit>> sets = List.of(List.of());
        int deepest = all.size() > MANY ? 1 : all.size();
        for (int size = 1; size <= deepest; size++) {
            List<List<FusedCircuit>> larger = new ArrayList<>();
            for (List<FusedCircuit> set : sets) {
                int from = set.isEmpty() ? 0 : all.indexOf(set.get(set.size() - 1)) + 1;
                for (FusedCircuit more : all.subList(from, all.size())) {
                    List<FusedCircuit> next = new ArrayList<>(set);
                    next.add(more);
                    (so.test(next) ? found : larger).add(next);
                }
            }
            sets = larger;
        }
        return found;
    }

    private static BigDecimal load(List<FusedCircuit> circuits) {
        return circuits.stream().map(FusedCircuit::loadAmps).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private void add(Way way, Feeds.Device device, BigDecimal amps, List<FusedCircuit> circuits) {
        Condition when = way.when();
        for (FusedCircuit circuit : circuits) {
            when = All.of(when, kit.kit().unfolded(circuit.when()), kit.kit().filled(circuit.position()));
        }
        adder.add(
                FitFinding.BRANCH_BELOW_CIRCUITS,
                way,
                circuits.stream().map(FusedCircuit::name).collect(Collectors.joining(", ")),
                when,
                "watts",
                new BigDecimal(Digits.plain(device.watts())),
                "amps",
                new BigDecimal(Digits.upTo(amps, 1)),
                "load",
                new BigDecimal(Digits.plain(load(circuits))),
                "circuits",
                circuits.stream().map(FusedCircuit::says).toList());
    }
}
