package boltlore.trades.charging;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Branch.FedBy;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.LowVoltage;
import boltlore.catalogue.Pack;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Works out the currents of branches: I = P / (η U) of what they feed, at the lowest voltage of what feeds them, where the
 * current of a device with constant power is largest (Ohm's law and the definition of efficiency).
 */
public final class BranchLoads {

    /** What is worked out of one branch, before its declared load is held against it. */
    private record Amps(BigDecimal hours, BigDecimal most, String says) {

        Amps plus(Amps other) {
            String both = says.isEmpty() ? other.says : says + " + " + other.says;
            return new Amps(hours.add(other.hours), most.add(other.most), both);
        }
    }

    private static final Amps NONE = new Amps(BigDecimal.ZERO, BigDecimal.ZERO, "");

    private final Electrics electrics;
    private final Collection<Branch> there;
    private final @Nullable Pack pack;
    private final Map<Feeds.Chosen, BigDecimal> chosen;

    /**
     * Currents in one kit.
     *
     * @param there the branches that the kit has
     * @param pack null where it is not known
     * @param chosen amps that the order's choices lead to, as far as they are known
     */
    public BranchLoads(
            Electrics electrics, Collection<Branch> there, @Nullable Pack pack, Map<Feeds.Chosen, BigDecimal> chosen) {
        this.electrics = electrics;
        this.there = List.copyOf(there);
        this.pack = pack;
        this.chosen = Map.copyOf(chosen);
    }

    /** The load that the branch is judged by; empty where it is neither declared nor can be worked out. */
    public Optional<BranchLoad> of(Branch branch) {
        Optional<Amps> worked = worked(branch, new HashSet<>());
        BigDecimal declared = branch.loadAmps();
        if (worked.isEmpty()) {
            return Optional.ofNullable(declared).map(amps -> new BranchLoad(amps, amps, false, "as declared"));
        }
        Amps amps = worked.get();
        BigDecimal least = declared == null ? BigDecimal.ZERO : declared;
        String says = least.compareTo(amps.most) > 0
                ? NumberFormats.amps(least) + " declared, " + NumberFormats.amps(amps.most) + " calculated: "
                        + amps.says
                : amps.says;
        return Optional.of(new BranchLoad(amps.hours.max(least), amps.most.max(least), true, says));
    }

    private Optional<Amps> worked(Branch branch, Set<String> above) {
        Feeds feeds = branch.feeds();
        if (feeds instanceof Feeds.Device device) {
            return device(branch, device);
        }
        if (feeds instanceof Feeds.Branches branches) {
            return branches(branch, branches, above);
        }
        return feeds instanceof Feeds.Chosen by
                ? Optional.ofNullable(chosen.get(by)).map(amps -> new Amps(amps, amps, chosenSays(by)))
                : Optional.empty();
    }

    private static String chosenSays(Feeds.Chosen by) {
        return switch (by) {
            case CHARGER_OUTPUT -> "the charger's power × efficiency at the empty pack";
            case CHARGER_INPUT -> "lesser current of inlet and charger";
            case DIRECT_CHARGING -> "lesser current of inlet and pack on direct current";
            case OUTLET -> "rating of the V2L outlet";
        };
    }

    private Optional<Amps> device(Branch branch, Feeds.Device device) {
        BigDecimal volts = device.atVolts() == null ? lowestVolts(branch) : device.atVolts();
        return Optional.ofNullable(volts).map(at -> {
            BigDecimal percentVolts = device.efficiencyPercent().multiply(at).movePointLeft(2);
            String says = NumberFormats.number(device.watts(), 0) + " W / ("
                    + NumberFormats.number(device.efficiencyPercent(), 1) + " % × " + NumberFormats.volts(at) + ")";
            return new Amps(
                    device.continuousWatts().divide(percentVolts, MathContext.DECIMAL128),
                    device.watts().divide(percentVolts, MathContext.DECIMAL128),
                    says);
        });
    }

    private @Nullable BigDecimal lowestVolts(Branch branch) {
        FedBy fedBy = branch.fedBy();
        if (fedBy instanceof FedBy.Mains mains) {
            return mains.volts();
        }
        if (fedBy instanceof FedBy.Charger charger) {
            return charger.volts();
        }
        LowVoltage network = electrics.lowVoltage();
        if (fedBy instanceof FedBy.LowVoltage) {
            return network == null ? null : network.lowestVolts();
        }
        return pack == null ? null : pack.lowestVolts();
    }

    /** Empty where one of them cannot be worked out, or feeds what feeds it. */
    private Optional<Amps> branches(Branch branch, Feeds.Branches feeds, Set<String> above) {
        if (!above.add(branch.name())) {
            return Optional.empty();
        }
        List<Amps> all = new ArrayList<>();
        for (Branch below : there) {
            if (feeds.names().contains(below.name())) {
                Optional<Amps> amps = worked(below, new HashSet<>(above)).map(found -> atLeast(found, below));
                if (amps.isEmpty()) {
                    return Optional.empty();
                }
                all.add(new Amps(amps.get().hours, amps.get().most, NumberFormats.amps(amps.get().most)));
            }
        }
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(shared(all.stream().reduce(NONE, Amps::plus), feeds.share()));
    }

    private static Amps atLeast(Amps amps, Branch branch) {
        BigDecimal least = branch.loadAmps() == null ? BigDecimal.ZERO : branch.loadAmps();
        return new Amps(amps.hours.max(least), amps.most.max(least), amps.says);
    }

    private static Amps shared(Amps sum, BigDecimal share) {
        return share.compareTo(BigDecimal.ONE) == 0
                ? sum
                : new Amps(
                        sum.hours.multiply(share),
                        sum.most.multiply(share),
                        share.toPlainString() + " × (" + sum.says + ")");
    }
}
