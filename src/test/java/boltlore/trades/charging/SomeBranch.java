package boltlore.trades.charging;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Branch.FedBy;
import boltlore.catalogue.Branch.Protection;
import boltlore.catalogue.Condition;
import boltlore.catalogue.ElectricLimits;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.Fuse.Guards;
import boltlore.catalogue.LowVoltage;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PowerCable;
import boltlore.findings.Finding;
import boltlore.findings.Kind;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Single branches, checked by themselves. */
final class SomeBranch {

    private SomeBranch() {}

    static final PartNumber PART = new PartNumber("P");

    /** 400 V when full, 288 V when empty, 0.1 Ω: a short circuit of 4 kA; 280 A for hours, 350 A for a short time. */
    static final Pack PACK = new Pack(
            "p",
            "p",
            Condition.ALWAYS,
            PART,
            n("44"),
            n("78"),
            8,
            1,
            n("400"),
            n("288"),
            n("100"),
            n("20"),
            n("280"),
            n("350"),
            n("100"));

    static final PowerCable CABLE =
            new PowerCable(PART, n("50"), n("0.386"), 125, n("1000"), n("300"), "free air", n("143"));

    static final FedBy FROM_PACK = new FedBy.Pack();

    static BigDecimal n(String number) {
        return new BigDecimal(number);
    }

    static Branch branch(FedBy fedBy, String load, Protection protection, String derating) {
        Feeds feeds = new Feeds.Device(n(load).multiply(n("100")), n(load).multiply(n("100")), n("100"), n("100"));
        return new Branch(
                "b",
                "Battery to box",
                Condition.ALWAYS,
                new PositionName("cable"),
                fedBy,
                null,
                feeds,
                protection,
                PART,
                n(derating),
                "");
    }

    static Protection by(@Nullable String fuse, String limitedBy) {
        return new Protection(fuse == null ? null : new Protection.Fuse(fuse, 0), null, limitedBy);
    }

    static Branch branch(String load, String derating) {
        return branch(FROM_PACK, load, by("f", ""), derating);
    }

    static Fuse fuse(String amps, String volts, String kiloamps, String a2s, Guards guards) {
        return new Fuse("f", "Fuse", PART, n(amps), n(volts), n(kiloamps), n(a2s), guards);
    }

    static Fuse fuse(String amps) {
        return fuse(amps, "500", "20", "90000", Guards.OVERLOAD);
    }

    static Electrics with(@Nullable ElectricLimits limits, Fuse... fuses) {
        return new Electrics(
                null,
                new LowVoltage(n("14.4"), n("12"), n("7.2")),
                limits,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(fuses),
                List.of(CABLE),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    static BranchCheck check(Branch branch, Electrics electrics, @Nullable Pack pack, @Nullable Integer mm) {
        BranchLoad load = new BranchLoads(electrics, List.of(branch), pack, Map.of())
                .of(branch)
                .orElse(null);
        return BranchChecker.check(branch, electrics, CABLE, pack, load, mm);
    }

    static String verdict(Branch branch, Fuse... fuses) {
        return check(branch, with(null, fuses), PACK, null).verdict();
    }

    static Stream<Kind> found(BranchCheck check) {
        return check.comparisons().stream()
                .filter(comparison -> !comparison.holds())
                .map(Comparison::finding)
                .map(Finding::kind);
    }
}
