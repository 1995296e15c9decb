package boltlore.trades.cooling;

import boltlore.bill.Item;
import boltlore.catalogue.Cooling;
import boltlore.catalogue.Cooling.Coolant;
import boltlore.catalogue.Cooling.CoolantCircuit;
import boltlore.catalogue.Cooling.Hose;
import boltlore.catalogue.Driving.DriveUnit;
import boltlore.catalogue.Part;
import boltlore.choices.Conditions;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.report.Report;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.cooling.CircuitFlow.LaidHose;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether each coolant circuit of a kit carries off its heat. */
public final class CoolingTrade extends Trade {

    private static final String TITLE = "Cooling";
    private static final double RPM = 60 / (2 * StrictMath.PI);
    private static final double PERCENT = 100;
    private static final BigDecimal MM_IN_M = BigDecimal.valueOf(1000);

    public CoolingTrade() {
        super(
                "cooling",
                Room.ENGINEERING,
                "Calculate the flow of each coolant circuit from its pump and hoses, and how warm it gets, and write a"
                        + " cooling sheet for each order.",
                "For no order of these can cooling be calculated.",
                List.of(CoolingFinding.values()));
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return Outcome.sound(kits.stream().map(CoolingTrade::work).toList());
    }

    private static TradeResult work(KitInWork kit) {
        List<Finding> found = new ArrayList<>();
        List<CircuitFlow> circuits = circuits(kit, found);
        circuits.stream().flatMap(CoolingTrade::judge).forEach(found::add);
        circuits.stream().flatMap(flow -> Filled.findings(flow, kit)).forEach(found::add);
        circuits.stream()
                .map(CircuitFlow::circuit)
                .flatMap(circuit -> Stream.concat(
                        Bores.findings(circuit, kit.bill().items()).stream(), Bores.leftOut(circuit, kit).stream()))
                .forEach(found::add);
        Findings findings = new Findings(found);
        return circuits.isEmpty()
                ? new TradeResult(kit.order().name(), findings, List.of())
                : TradeResult.of(kit, findings, () -> report(circuits, findings, kit));
    }

    /** The circuits of this order; what cannot be judged is found missing. */
    static List<CircuitFlow> circuits(KitInWork kit, List<Finding> missing) {
        Cooling cooling = kit.family().driving().cooling();
        List<CoolantCircuit> held = cooling.circuits().stream()
                .filter(each -> Conditions.holds(each.when(), kit.choices()))
                .toList();
        if (held.isEmpty()) {
            missing.add(missing("'circuits' in driving.json"));
        }
        List<CircuitFlow> circuits = new ArrayList<>();
        for (CoolantCircuit circuit : held) {
            Optional<Heat> heat = heat(circuit, kit);
            Optional<Coolant> coolant = cooling.coolants().stream()
                    .filter(each -> each.name().equals(circuit.coolant()))
                    .findFirst();
            if (heat.isPresent() && coolant.isPresent()) {
                List<LaidHose> hoses = circuit.hoses().stream()
                        .flatMap(hose -> laid(hose, kit))
                        .toList();
                circuits.add(new CircuitFlow(circuit, coolant.get(), hoses, heat.get()));
            } else {
                missing.add(missing("'driveUnits' in driving.json"));
            }
        }
        return circuits;
    }

    private static Finding missing(String file) {
        return Finding.of(KitFinding.NOT_JUDGED, "cooling", "trade", "Cooling", "file", file);
    }

    /** The one that warms the coolant most: what stands in the data, and what the battery's current makes. */
    private static Optional<Heat> heat(CoolantCircuit circuit, KitInWork kit) {
        Stream<Double> lasting = circuit.heatWatts() != null
                ? Stream.of(circuit.heatWatts().doubleValue())
                : circuit.moduleSpecificHeat() == null ? driveUnit(kit) : Stream.empty();
        return Stream.concat(lasting.map(Heat::lasting), Heat.ofPack(circuit, kit))
                .max(Comparator.comparingDouble(Heat::effective));
    }

    /** What motor and inverter lose at their greatest power for hours. */
    private static Stream<Double> driveUnit(KitInWork kit) {
        return kit.family().driving().driveUnits().stream()
                .filter(each -> kit.bill().quantities().containsKey(each.part()))
                .limit(1)
                .map(CoolingTrade::lossWatts);
    }

    /** Greatest torque × speed, times 1/η − 1. */
    static double lossWatts(DriveUnit unit) {
        double most = unit.curve().stream()
                .mapToDouble(point -> point.continuousNm().doubleValue() * point.rpm() / RPM)
                .max()
                .orElse(0);
        return most * (PERCENT / unit.motorPercent().doubleValue() - 1);
    }

    private static Stream<LaidHose> laid(Hose hose, KitInWork kit) {
        return kit.bill().items().stream()
                .filter(item -> item.position().name().equals(hose.position()))
                .flatMap(item -> lengthMm(item)
                        .map(length -> new LaidHose(
                                kit.says(item.part().name()),
                                length.doubleValue(),
                                hose.boreMm().doubleValue()))
                        .stream());
    }

    /** Of a cut hose its own length, of one by the metre as much as the kit has; clips have none. */
    static Optional<BigDecimal> lengthMm(Item item) {
        Part part = item.part();
        if (part.lengthMm() != null) {
            return Optional.of(BigDecimal.valueOf(part.lengthMm()).multiply(item.quantity()));
        }
        return part.unit().equals("m") ? Optional.of(item.quantity().multiply(MM_IN_M)) : Optional.empty();
    }

    static Stream<Finding> judge(CircuitFlow flow) {
        return Stream.of(least(flow), warm(flow), declared(flow)).flatMap(Optional::stream);
    }

    /** A figure that follows from nothing hides what really flows. */
    private static Optional<Finding> declared(CircuitFlow flow) {
        CoolantCircuit circuit = flow.circuit();
        return circuit.heatWatts() == null || circuit.moduleSpecificHeat() != null
                ? Optional.empty()
                : Optional.of(Finding.of(
                        CoolingFinding.HEAT_NOT_DERIVED,
                        circuit.name(),
                        "circuit",
                        circuit.says(),
                        "heat",
                        circuit.heatWatts()));
    }

    private static Optional<Finding> least(CircuitFlow flow) {
        if (flow.thirstiest().isEmpty()) {
            return Optional.of(Finding.of(
                    CoolingFinding.LEAST_FLOW_NOT_GIVEN,
                    flow.circuit().name(),
                    "circuit",
                    flow.circuit().says()));
        }
        double litres = flow.litresPerMin();
        return flow.thirstiest()
                .filter(least -> litres < least.litresPerMin().doubleValue())
                .map(least -> Finding.of(
                        CoolingFinding.COOLANT_FLOW_LOW,
                        flow.circuit().name(),
                        "circuit",
                        flow.circuit().says(),
                        "what",
                        least.says(),
                        "least",
                        least.litresPerMin(),
                        "flow",
                        rounded(litres, RoundingMode.FLOOR),
                        "takes",
                        rounded(flow.circuitKpa(least.litresPerMin().doubleValue()), RoundingMode.CEILING),
                        "lifts",
                        rounded(flow.pumpKpa(least.litresPerMin().doubleValue()), RoundingMode.FLOOR)));
    }

    private static Optional<Finding> warm(CircuitFlow flow) {
        double hottest = flow.hottest();
        return hottest <= flow.circuit().mostC().doubleValue() ? Optional.empty() : Optional.of(tooHot(flow, hottest));
    }

    private static Finding tooHot(CircuitFlow flow, double hottest) {
        Heat.OfPack pack = flow.heat().pack();
        List<Object> data = new ArrayList<>(List.of(
                "circuit",
                flow.circuit().says(),
                "hottest",
                rounded(hottest, RoundingMode.CEILING),
                "most",
                flow.circuit().mostC(),
                "air",
                flow.circuit().airC(),
                "heat",
                whole(flow.heat().watts())));
        if (pack != null) {
            data.addAll(List.of(
                    "way",
                    pack.charging() ? 0 : 1,
                    "amps",
                    whole(pack.amps()),
                    "milliohm",
                    whole(pack.milliohm()),
                    "minutes",
                    whole(pack.minutes())));
        }
        return Finding.of(
                pack == null ? CoolingFinding.COOLANT_TOO_HOT : CoolingFinding.BATTERY_TOO_HOT,
                flow.circuit().name(),
                data.toArray());
    }

    private static BigDecimal whole(double number) {
        return BigDecimal.valueOf(number).setScale(0, RoundingMode.HALF_UP);
    }

    private static BigDecimal rounded(double number, RoundingMode towards) {
        return BigDecimal.valueOf(number).setScale(1, towards);
    }

    private static Report report(List<CircuitFlow> circuits, Findings findings, KitInWork kit) {
        return KitReport.begin(kit, "cooling", TITLE, CoolingTrade.class)
                .found(kit.answered(findings))
                .glance(CoolingPage.circuits(circuits).build())
                .page(CoolingPage.compose(circuits, findings, kit, KitReport.footer(kit, TITLE))
                        .also(CoolingPage.pressureDrop(circuits, KitReport.footer(kit, TITLE))))
                .build();
    }
}
