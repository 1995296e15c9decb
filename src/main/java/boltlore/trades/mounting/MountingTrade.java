package boltlore.trades.mounting;

import boltlore.catalogue.Driving.DriveUnit;
import boltlore.catalogue.Driving.Torque;
import boltlore.catalogue.Mounting;
import boltlore.catalogue.Mounting.Mount;
import boltlore.catalogue.Mounting.Welds;
import boltlore.catalogue.Position;
import boltlore.choices.Conditions;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.measure.PositionName;
import boltlore.report.Report;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.fixings.FixingsTrade;
import boltlore.trades.weighing.Added;
import boltlore.trades.weighing.AxleLoadsTrade;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Whether the mounts of drive unit and battery bear crash, road and torque. */
public final class MountingTrade extends Trade {

    /** A thinner fillet weld is not to be reckoned with: EN 1993-1-8:2005, 4.5.2(2), from memory. */
    private static final BigDecimal LEAST_THROAT_MM = BigDecimal.valueOf(3);

    private static final String TITLE = "Mounting";
    private static final double NEWTON_IN_KN = 1000;

    public MountingTrade() {
        super(
                "mounting",
                Room.ENGINEERING,
                "Compare the loads on the mounts of heavy parts, from shocks and the drive's torque, with what their bolts"
                        + " and welds bear, and write a mounting sheet for each order.",
                "For no order of these can mounts be judged.",
                List.of(MountingFinding.values()));
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return Outcome.sound(kits.stream().map(MountingTrade::work).toList());
    }

    private static TradeResult work(KitInWork kit) {
        List<Finding> found = new ArrayList<>();
        List<MountLoad> loads = loads(kit, found);
        worst(loads).stream().flatMap(MountingTrade::judge).forEach(found::add);
        List<Mount> mounts = loads.stream().map(MountLoad::mount).distinct().toList();
        mounts.stream().flatMap(MountingTrade::thin).forEach(found::add);
        mounts.stream().flatMap(mount -> MountWelds.findings(mount, kit)).forEach(found::add);
        found.addAll(MountFigures.findings(
                mounts, loads.stream().map(MountLoad::shock).distinct().toList(), FixingsTrade.joints(kit)));
        Findings findings = new Findings(found);
        return loads.isEmpty()
                ? new TradeResult(kit.order().name(), findings, List.of())
                : TradeResult.of(kit, findings, () -> report(loads, findings, kit));
    }

    /** Every mount of the order under every shock. */
    static List<MountLoad> loads(KitInWork kit, List<Finding> missing) {
        Mounting mounting = kit.family().driving().mounting();
        double outputNm = outputNm(kit);
        List<MountLoad> loads = new ArrayList<>();
        for (Mount mount : mounting.mounts()) {
            double massKg = Conditions.holds(mount.when(), kit.choices()) ? massKg(mount, kit) : 0;
            if (massKg > 0) {
                mounting.shocks().forEach(shock -> loads.add(new MountLoad(mount, shock, massKg, outputNm)));
            }
        }
        if (loads.isEmpty()) {
            missing.add(missing("'mounts' and 'shocks' in driving.json"));
        } else if (outputNm == 0 && loads.stream().anyMatch(load -> load.mount().leverMm() != null)) {
            missing.add(missing("'driveUnits' in driving.json, so the drive's torque,"));
        }
        return loads;
    }

    private static Finding missing(String file) {
        return Finding.of(KitFinding.NOT_JUDGED, "mounting", "trade", "Mounting", "file", file);
    }

    /** As the weight statement has it: all at those positions and fastened there, with what they need. */
    private static double massKg(Mount mount, KitInWork kit) {
        Map<PositionName, Boolean> onIt = new HashMap<>();
        return AxleLoadsTrade.weighing(kit).added().stream()
                .filter(each -> onIt.computeIfAbsent(
                        each.item().position().name(),
                        name -> hangsOn(mount, each.item().position(), kit)))
                .map(Added::massKg)
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .doubleValue();
    }

    private static boolean hangsOn(Mount mount, Position position, KitInWork kit) {
        PositionName under = position.under();
        return mount.carries().contains(position.name())
                || (under != null
                        && kit.family().positions().stream()
                                .anyMatch(each -> each.name().equals(under) && hangsOn(mount, each, kit)));
    }

    /** Greatest torque of the motor times the ratio of its reduction gear; 0 where the drive unit is not known. */
    private static double outputNm(KitInWork kit) {
        return kit.family().driving().driveUnits().stream()
                .filter(unit -> kit.bill().quantities().containsKey(unit.part()))
                .mapToDouble(MountingTrade::outputNm)
                .max()
                .orElse(0);
    }

    private static double outputNm(DriveUnit unit) {
        return unit.curve().stream()
                .map(Torque::peakNm)
                .max(Comparator.naturalOrder())
                .map(most -> most.multiply(unit.ratio()))
                .orElse(BigDecimal.ZERO)
                .doubleValue();
    }

    /** Each mount under the shock that leaves it the least. */
    static List<MountLoad> worst(List<MountLoad> loads) {
        return loads.stream()
                .map(MountLoad::mount)
                .distinct()
                .map(mount -> loads.stream()
                        .filter(load -> load.mount().equals(mount))
                        .min(Comparator.comparingDouble(MountLoad::margin))
                        .orElseThrow())
                .toList();
    }

    static Stream<Finding> judge(MountLoad load) {
        return Stream.concat(
                Stream.ofNullable(load.mount().bolts())
                        .filter(bolts -> MountLoad.bears(bolts) < load.newton())
                        .map(bolts -> found(MountingFinding.MOUNT_BOLTS_TOO_WEAK, load, MountLoad.bears(bolts))),
                Stream.ofNullable(load.mount().welds())
                        .filter(welds -> MountLoad.bears(welds) < load.newton())
                        .map(welds -> weld(load, welds)));
    }

    static Stream<Finding> thin(Mount mount) {
        return Stream.ofNullable(mount.welds())
                .filter(welds -> welds.throatMm().compareTo(LEAST_THROAT_MM) < 0)
                .map(welds -> Finding.of(
                        MountingFinding.MOUNT_WELD_THIN,
                        mount.name(),
                        "mount",
                        mount.says(),
                        "has",
                        welds.throatMm(),
                        "least",
                        LEAST_THROAT_MM));
    }

    private static Finding weld(MountLoad load, Welds welds) {
        return found(
                MountingFinding.MOUNT_WELD_TOO_WEAK,
                load,
                MountLoad.bears(welds),
                "throat",
                rounded(load.throatMm(welds), RoundingMode.CEILING),
                "has",
                welds.throatMm());
    }

    private static Finding found(MountingFinding kind, MountLoad load, double bears, Object... more) {
        List<Object> data = new ArrayList<>(List.of(
                "mount",
                load.mount().says(),
                "shock",
                load.shock().says(),
                "force",
                rounded(load.newton() / NEWTON_IN_KN, RoundingMode.CEILING),
                "bears",
                rounded(bears / NEWTON_IN_KN, RoundingMode.FLOOR)));
        data.addAll(List.of(more));
        return Finding.of(kind, load.mount().name(), data.toArray());
    }

    private static BigDecimal rounded(double number, RoundingMode towards) {
        return BigDecimal.valueOf(number).setScale(1, towards);
    }

    private static Report report(List<MountLoad> loads, Findings findings, KitInWork kit) {
        return KitReport.begin(kit, "mounting", TITLE, MountingTrade.class)
                .found(kit.answered(findings))
                .glance(MountingPage.mounts(worst(loads), kit).build())
                .page(MountingPage.compose(loads, findings, kit, KitReport.footer(kit, TITLE)))
                .build();
    }
}
