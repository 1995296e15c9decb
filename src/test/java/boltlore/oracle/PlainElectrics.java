package boltlore.oracle;

import boltlore.catalogue.Facts;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.catalogue.Role;
import boltlore.measure.PartNumber;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import java.math.BigDecimal;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Whether inlet, charger, supply, outlet, market and language agree, and whether every connector is closed. */
final class PlainElectrics {

    private final PlainKit kit;
    private final SortedSet<Finding> findings = new TreeSet<>();

    private PlainElectrics(PlainKit kit) {
        this.kit = kit;
    }

    static SortedSet<Finding> of(PlainKit kit) {
        PlainElectrics electrics = new PlainElectrics(kit);
        electrics.phases(Role.INLET, FindingKind.CHARGER_PHASES_ABOVE_INLET);
        electrics.phases(Role.SUPPLY, FindingKind.CHARGER_PHASES_ABOVE_SUPPLY);
        electrics.current();
        electrics.export();
        electrics.market();
        kit.quantities().keySet().forEach(electrics::connectors);
        return electrics.findings;
    }

    private Facts facts(Role role) {
        return kit.choice.facts(role);
    }

    private String name(Role role) {
        return kit.choice.inRole(role).map(OptionValue::value).orElse("");
    }

    private void phases(Role limiting, FindingKind kind) {
        Integer charger = facts(Role.CHARGER).phases();
        Integer limit = facts(limiting).phases();
        if (charger != null && limit != null && charger > limit) {
            findings.add(new Finding(kind, name(Role.CHARGER), name(limiting)));
        }
    }

    private void current() {
        if (over(facts(Role.CHARGER).amps(), facts(Role.INLET).amps())) {
            findings.add(new Finding(FindingKind.CHARGER_ABOVE_INLET, name(Role.CHARGER), name(Role.INLET)));
        }
    }

    private void export() {
        Facts outlet = facts(Role.EXPORT);
        Facts charger = facts(Role.CHARGER);
        boolean feedsOut = charger.twoWay() != null && charger.twoWay();
        if (outlet.socket() != null && kit.choice.inRole(Role.CHARGER).isPresent() && !feedsOut) {
            findings.add(new Finding(FindingKind.EXPORT_NEEDS_TWO_WAY_CHARGER, name(Role.EXPORT), name(Role.CHARGER)));
        }
        if (outlet.volts() != null && outlet.amps() != null && charger.exportKw() != null) {
            BigDecimal watts = outlet.volts().multiply(outlet.amps());
            if (over(watts, charger.exportKw().multiply(BigDecimal.valueOf(1_000)))) {
                findings.add(new Finding(FindingKind.EXPORT_ABOVE_RATING, name(Role.EXPORT), name(Role.CHARGER)));
            }
        }
    }

    private static boolean over(@Nullable BigDecimal amount, @Nullable BigDecimal limit) {
        return amount != null && limit != null && amount.compareTo(limit) > 0;
    }

    private void market() {
        Facts market = facts(Role.MARKET);
        String socket = facts(Role.EXPORT).socket();
        stranger(FindingKind.INLET_OF_ANOTHER_MARKET, name(Role.INLET), name(Role.INLET), market.inlets());
        stranger(FindingKind.EXPORT_SOCKET_OF_ANOTHER_MARKET, name(Role.EXPORT), socket, market.sockets());
        stranger(FindingKind.LABELS_OF_ANOTHER_MARKET, name(Role.LANGUAGE), name(Role.LANGUAGE), market.languages());
    }

    private void stranger(FindingKind kind, String subject, @Nullable String looked, List<String> known) {
        if (looked != null && !looked.isEmpty() && !known.isEmpty() && !known.contains(looked)) {
            findings.add(new Finding(kind, subject, name(Role.MARKET)));
        }
    }

    private void connectors(PartNumber number) {
        for (Port port : kit.part(number).ports()) {
            if (!mated(port) && !blanked(port)) {
                String blank = port.blank() == null ? "" : port.blank().text();
                findings.add(new Finding(FindingKind.INTERLOCK_OPEN, number + "/" + port.name(), blank));
            }
        }
    }

    /** A mate is in the kit, and there are enough of it for all ports that name it. */
    private boolean mated(Port port) {
        return port.mates().stream()
                .anyMatch(mate -> kit.has(mate)
                        && kit.quantity(mate)
                                        .compareTo(ports(other -> other.mates().contains(mate)))
                                >= 0);
    }

    private boolean blanked(Port port) {
        PartNumber blank = port.blank();
        return blank != null
                && kit.quantity(blank).compareTo(ports(other -> blank.equals(other.blank()) && !mated(other))) >= 0;
    }

    private BigDecimal ports(java.util.function.Predicate<Port> counted) {
        BigDecimal sum = BigDecimal.ZERO;
        for (PartNumber number : kit.quantities().keySet()) {
            Part part = kit.part(number);
            for (Port port : part.ports()) {
                if (counted.test(port)) {
                    sum = sum.add(kit.quantity(number));
                }
            }
        }
        return sum;
    }
}
