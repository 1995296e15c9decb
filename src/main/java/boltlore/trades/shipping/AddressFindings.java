package boltlore.trades.shipping;

import boltlore.findings.Finding;
import boltlore.measure.DeliveryTerm;
import boltlore.measure.Party;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What labels and customs papers cannot say: who receives, by what term, and what a line is worth. */
final class AddressFindings {

    private static final String CONSIGNEE = "consignee";
    private static final String CUSTOMS = "customs lines";

    private final Shipment shipment;
    private final List<Finding> findings = new ArrayList<>();

    private AddressFindings(Shipment shipment) {
        this.shipment = shipment;
    }

    static List<Finding> find(Shipment shipment) {
        AddressFindings found = new AddressFindings(shipment);
        Party consignee = shipment.parties().consignee().orElse(null);
        String destination = shipment.route().destination();
        if (consignee == null) {
            found.add(ShippingFinding.CONSIGNEE_NOT_KNOWN, CONSIGNEE);
        } else if (!consignee.country().equals(destination)) {
            found.add(
                    ShippingFinding.CONSIGNEE_ELSEWHERE,
                    CONSIGNEE,
                    "country",
                    consignee.country(),
                    "destination",
                    destination);
        }
        if (shipment.price() != null) {
            found.delivery(shipment.price());
        }
        // Nobody has to know before the destination is known.
        if (!destination.isEmpty() && shipment.route().leavesUnion(shipment.shipping())) {
            found.exported();
        }
        return found.findings;
    }

    private void add(ShippingFinding kind, String subject, Object... named) {
        findings.add(Finding.of(kind, subject, named));
    }

    private void delivery(SellingPrice price) {
        DeliveryTerm term = price.terms().delivery();
        if (term != null && term.rule().bySeaOnly() && shipment.route().by() != By.SEA) {
            add(
                    ShippingFinding.DELIVERY_TERM_OF_THE_SEA,
                    "delivery",
                    "rule",
                    term.rule().name(),
                    "by",
                    shipment.route().by().name().toLowerCase(Locale.ROOT));
        }
    }

    private void exported() {
        if (shipment.parties().seller().eori().isEmpty()) {
            add(ShippingFinding.SENDER_WITHOUT_EORI, CUSTOMS);
        }
        SellingPrice price = shipment.price();
        if (price == null) {
            return;
        }
        if (price.terms().delivery() == null) {
            add(ShippingFinding.DELIVERY_NOT_SAID, CUSTOMS);
        }
        List<String> bare = shipment.customs().stream()
                .map(CustomsLine::hs)
                .filter(hs ->
                        !hs.isEmpty() && shipment.selling().customsValue(hs).isEmpty())
                .distinct()
                .toList();
        if (!bare.isEmpty()) {
            add(
                    ShippingFinding.CUSTOMS_VALUE_OF_CLASS_NOT_KNOWN,
                    CUSTOMS,
                    "codes",
                    NumberFormats.first(bare),
                    "more",
                    NumberFormats.more(bare));
        }
    }
}
