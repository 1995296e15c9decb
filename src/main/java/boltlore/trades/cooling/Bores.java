package boltlore.trades.cooling;

import boltlore.bill.Item;
import boltlore.catalogue.Cooling.CoolantCircuit;
import boltlore.catalogue.Cooling.Fittings;
import boltlore.catalogue.Cooling.Hose;
import boltlore.catalogue.Flow;
import boltlore.catalogue.Port;
import boltlore.findings.Finding;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** Bores that a circuit is reckoned with, against the coolant ports of what stands at its hoses' positions. */
final class Bores {

    private Bores() {}

    static List<Finding> findings(CoolantCircuit circuit, List<Item> items) {
        List<Finding> found = new ArrayList<>();
        SortedSet<BigDecimal> all = new TreeSet<>();
        for (Hose hose : circuit.hoses()) {
            for (Item item : items) {
                SortedSet<BigDecimal> ports = ports(hose, item);
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

    private static SortedSet<BigDecimal> ports(Hose hose, Item item) {
        SortedSet<BigDecimal> bores = new TreeSet<>();
        if (item.position().name().equals(hose.position())) {
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
