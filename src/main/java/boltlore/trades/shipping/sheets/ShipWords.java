package boltlore.trades.shipping.sheets;

import boltlore.measure.Wording;
import boltlore.report.Phrases;
import boltlore.trades.shipping.Consignment;
import boltlore.trades.shipping.Crate;
import boltlore.trades.shipping.ShipFinding;
import boltlore.trades.shipping.ShipFindings;
import boltlore.trades.shipping.Shipment;
import java.util.List;

/** Words on crates for other places than the papers. */
public final class ShipWords {

    private ShipWords() {}

    /** What must be mended before the crates leave, a sentence each. */
    public static List<String> stopping(Shipment shipment, Consignment together) {
        return ShipFindings.of(shipment, together).stream()
                .filter(ShipFinding::stops)
                .map(finding -> finding.about() + ": " + finding.says())
                .toList();
    }

    /** Fit stage and content in English. */
    public static String content(Shipment shipment, Crate crate) {
        Phrases phrases = Phrases.of(ShipSheet.class, "packing", Wording.ENGLISH);
        return new LoadWords(shipment.workshop(), shipment.shipping(), Wording.ENGLISH, phrases).of(crate.load());
    }
}
