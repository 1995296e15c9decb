package boltlore.oracle;

import boltlore.catalogue.Facts;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Port;
import boltlore.catalogue.PublicLead;
import boltlore.catalogue.Role;
import boltlore.measure.PartNumber;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
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
        electrics.leads();
        electrics.export();
        electrics.market();
        electrics.connectors();
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

    private void leads() {
        Facts inlet = facts(Role.INLET);
        Facts charger = facts(Role.CHARGER);
        for (PublicLead lead : kit.family.electrics().leads()) {
            if (!kit.has(lead.part())) {
                continue;
            }
            String part = lead.part().text();
            if (inlet.phases() != null
                    && charger.phases() != null
                    && Math.min(inlet.phases(), charger.phases()) > lead.phases()) {
                findings.add(new Finding(FindingKind.LEAD_PHASES_BELOW_CHARGER, part, name(Role.CHARGER)));
            }
            if (over(inlet.amps(), lead.amps()) && over(charger.amps(), lead.amps())) {
                findings.add(new Finding(FindingKind.LEAD_AMPS_BELOW_CHARGER, part, name(Role.CHARGER)));
            }
        }
    }

    private void export() {
        Facts outlet = facts(Role.EXPORT);
        Facts charger = facts(Role.CHARGER);
        boolean feedsOut = charger.twoWay() != null && charger.twoWay();
        if (outlet.socket() != null && kit.choice.inRole(Role.CHARGER).isPresent() && !feedsOut) {
            findings.add(new Finding(
                    FindingKind.V2L_OUTLET_NEEDS_BIDIRECTIONAL_CHARGER, name(Role.EXPORT), name(Role.CHARGER)));
        }
        if (outlet.volts() != null && outlet.amps() != null && charger.exportKw() != null) {
            BigDecimal watts = outlet.volts().multiply(outlet.amps());
            if (over(watts, charger.exportKw().multiply(BigDecimal.valueOf(1_000)))) {
                findings.add(new Finding(FindingKind.V2L_OUTLET_ABOVE_CHARGER, name(Role.EXPORT), name(Role.CHARGER)));
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
        String apart = facts(Role.DC_INLET).amps() == null ? null : name(Role.DC_INLET);
        stranger(FindingKind.DC_INLET_OF_ANOTHER_MARKET, name(Role.DC_INLET), apart, market.inlets());
        stranger(FindingKind.V2L_OUTLET_OF_ANOTHER_MARKET, name(Role.EXPORT), socket, market.sockets());
        stranger(FindingKind.LABELS_OF_ANOTHER_MARKET, name(Role.LANGUAGE), name(Role.LANGUAGE), market.languages());
    }

    private void stranger(FindingKind kind, String subject, @Nullable String looked, List<String> known) {
        if (looked != null && !looked.isEmpty() && !known.isEmpty() && !known.contains(looked)) {
            findings.add(new Finding(kind, subject, name(Role.MARKET)));
        }
    }

    /**
     * A port may stay open where sets of ports with it lack more closing parts than any without it (Hall's condition,
     * tried on every set of ports that share closing parts, directly or through others).
     */
    private void connectors() {
        Map<List<PartNumber>, BigDecimal> ports = new LinkedHashMap<>();
        kit.quantities()
                .forEach((number, quantity) -> kit.part(number)
                        .connectors()
                        .forEach(port -> ports.merge(closers(port), quantity, BigDecimal::add)));
        for (PartNumber number : kit.quantities().keySet()) {
            for (Port port : kit.part(number).connectors()) {
                if (mayStayOpen(closers(port), ports)) {
                    String blank = port.blank() == null ? "" : port.blank().text();
                    findings.add(new Finding(FindingKind.INTERLOCK_OPEN, number + "/" + port.name(), blank));
                }
            }
        }
    }

    private static List<PartNumber> closers(Port port) {
        return Stream.concat(port.mates().stream(), Stream.ofNullable(port.blank()))
                .distinct()
                .sorted()
                .toList();
    }

    private boolean mayStayOpen(List<PartNumber> port, Map<List<PartNumber>, BigDecimal> ports) {
        List<List<PartNumber>> linked = new ArrayList<>(List.of(port));
        for (int i = 0; i < linked.size(); i++) {
            List<PartNumber> next = linked.get(i);
            ports.keySet().stream()
                    .filter(other -> !linked.contains(other) && !Collections.disjoint(other, next))
                    .forEach(linked::add);
        }
        BigDecimal with = BigDecimal.ZERO;
        BigDecimal without = BigDecimal.ZERO;
        for (int bits = 1; bits < 1 << linked.size(); bits++) {
            BigDecimal lacking = lacking(linked, bits, ports);
            with = with.max(lacking);
            without = (bits & 1) == 0 ? without.max(lacking) : without;
        }
        return with.compareTo(without) > 0;
    }

    private BigDecimal lacking(List<List<PartNumber>> linked, int bits, Map<List<PartNumber>, BigDecimal> ports) {
        BigDecimal lacking = BigDecimal.ZERO;
        Set<PartNumber> closing = new HashSet<>();
        for (int i = 0; i < linked.size(); i++) {
            if ((bits >> i & 1) == 1) {
                lacking = lacking.add(ports.getOrDefault(linked.get(i), BigDecimal.ZERO));
                closing.addAll(linked.get(i));
            }
        }
        for (PartNumber closer : closing) {
            lacking = kit.has(closer) ? lacking.subtract(kit.quantity(closer)) : lacking;
        }
        return lacking;
    }
}
