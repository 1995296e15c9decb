package boltlore.trades.cooling;

import boltlore.bill.Item;
import boltlore.catalogue.Cooling.CoolantCircuit;
import boltlore.catalogue.Cooling.Fittings;
import boltlore.catalogue.Cooling.Hose;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Flow;
import boltlore.catalogue.Port;
import boltlore.findings.Finding;
import boltlore.measure.Digits;
import boltlore.measure.PositionName;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Bores that a circuit is reckoned with, against the coolant ports of what stands at its hoses' positions. */
final class Bores {

    private Bores() {}

    static List<Finding> findings(CoolantCircuit circuit, List<Item> items) {
        List<Finding> found = new ArrayList<>();
        SortedSet<BigDecimal> all = new TreeSet<>();
        for (Hose hose : circuit.hoses()) {
            for (Item item : items) {
                SortedSet<BigDecimal> ports = ports(hose.position(), item);
                all.addAll(ports);
                if (!ports.isEmpty() && !ports.contains(plain(hose.boreMm()))) {
                    found.add(hose(circuit, hose, item, ports));
                }
            }
        }
        circuit.fittings().stream()
                .filter(each -> !all.isEmpty() && !all.contains(plain(each.boreMm())))
                .map(each -> fittings(circuit, each, all))
                .forEach(found::add);
        return found;
    }

    /** Hoses that the coolant flows through by fits.json, and whose pressure drop nobody counts. */
    static List<Finding> leftOut(CoolantCircuit circuit, KitInWork kit) {
        Set<PositionName> counted = circuit.hoses().stream().map(Hose::position).collect(Collectors.toSet());
        PositionName pump = circuit.fitted().pumpAt();
        Set<PositionName> through = kit.family().fits().runs().stream()
                .filter(run -> run.closed()
                        && run.steps().stream().anyMatch(step -> step.position().equals(pump)))
                .flatMap(run -> run.steps().stream())
                .map(Fits.Step::position)
                .filter(position -> !counted.contains(position))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return kit.bill().items().stream()
                .filter(item -> through.contains(item.position().name()))
                .filter(item -> CoolingTrade.lengthMm(item).isPresent()
                        && !ports(item.position().name(), item).isEmpty())
                .map(item -> Finding.of(
                        CoolingFinding.HOSE_NOT_COUNTED,
                        item.position().name().text(),
                        "circuit",
                        circuit.says(),
                        "position",
                        item.position().says(),
                        "part",
                        item.part().name().with(" (" + item.part().number() + ")")))
                .toList();
    }

    private static Finding hose(CoolantCircuit circuit, Hose hose, Item item, SortedSet<BigDecimal> ports) {
        return Finding.of(
                CoolingFinding.HOSE_BORE_DIFFERS,
                hose.position().text(),
                "circuit",
                circuit.says(),
                "position",
                item.position().says(),
                "bore",
                hose.boreMm(),
                "part",
                item.part().name().with(" (" + item.part().number() + ")"),
                "ports",
                ports);
    }

    private static Finding fittings(CoolantCircuit circuit, Fittings fittings, SortedSet<BigDecimal> ports) {
        return Finding.of(
                CoolingFinding.FITTING_BORE_DIFFERS,
                circuit.name() + "/" + fittings.says(),
                "circuit",
                circuit.says(),
                "fittings",
                fittings.says(),
                "bore",
                fittings.boreMm(),
                "ports",
                ports);
    }

    private static SortedSet<BigDecimal> ports(PositionName position, Item item) {
        SortedSet<BigDecimal> bores = new TreeSet<>();
        if (item.position().name().equals(position)) {
            for (Port port : item.part().ports()) {
                Port.Joint joint = port.joint();
                BigDecimal bore = joint == null || joint.flow() != Flow.COOLANT ? null : joint.boreMm();
                if (bore != null) {
                    bores.add(plain(bore));
                }
            }
        }
        return bores;
    }

    private static BigDecimal plain(BigDecimal mm) {
        return new BigDecimal(Digits.plain(mm));
    }
}
