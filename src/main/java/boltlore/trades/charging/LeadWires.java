package boltlore.trades.charging;

import boltlore.catalogue.Facts;
import boltlore.catalogue.PublicLead;
import boltlore.findings.Finding;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** The wires of a loose cable against the current that its plug, inlet and charger let flow, which no fuse of its own limits. */
final class LeadWires {

    private LeadWires() {}

    /**
     * What is wrong with it; empty where nobody says what the wires bear, for then they are taken to bear what the plug codes.
     *
     * @param inlet what the inlet takes, in A where it is known
     */
    static Optional<Finding> judge(PublicLead lead, Facts inlet, Facts charger) {
        BigDecimal wires = lead.wireAmps();
        if (wires == null) {
            return Optional.empty();
        }
        BigDecimal flows =
                Stream.of(inlet.amps(), charger.amps()).filter(Objects::nonNull).reduce(lead.amps(), BigDecimal::min);
        return flows.compareTo(wires) <= 0
                ? Optional.empty()
                : Optional.of(Finding.of(
                        ChargingFinding.LEAD_ABOVE_ITS_WIRES,
                        lead.part().text(),
                        "lead",
                        lead.part(),
                        "code",
                        NumberFormats.rounded(lead.amps(), 1),
                        "flows",
                        NumberFormats.rounded(flows, 1),
                        "wires",
                        NumberFormats.rounded(wires, 1)));
    }
}
