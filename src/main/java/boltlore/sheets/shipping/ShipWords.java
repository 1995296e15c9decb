package boltlore.sheets.shipping;

import boltlore.measure.Wording;
import boltlore.sheets.Phrases;
import boltlore.shipping.Crate;
import boltlore.shipping.Shipment;

/** Words on crates for other places than the papers. */
public final class ShipWords {

    private ShipWords() {}

    /** Fit stage and content in English. */
    public static String content(Shipment shipment, Crate crate) {
        Phrases phrases = Phrases.of(ShipSheet.class, "packing", Wording.ENGLISH);
        return new LoadWords(shipment.workshop(), shipment.shipping(), Wording.ENGLISH, phrases).of(crate.load());
    }
}
