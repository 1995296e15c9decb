package boltlore.trades.shipping.sheets;

import boltlore.report.PageBuilder;
import boltlore.trades.shipping.Shipment;

/** What can hurt while crates are packed, lifted and carried, in words. */
final class ShipCautions {

    private static final String LEAD = "Caution";

    private ShipCautions() {}

    static void lifting(PageBuilder page) {
        page.caution(
                LEAD,
                "Crates crush feet and backs: go by the mass on the label, lift with two people, pallet truck or hoist rated"
                        + " for it, never stand under a load, and strap what can tip. Follow your local rules for lifting.");
    }

    /** Where a crate holds lithium batteries. */
    static void lithium(PageBuilder page, Shipment shipment) {
        if (shipment.dangerous().stream().anyMatch(goods -> goods.lithium())) {
            page.caution(
                    LEAD,
                    "Lithium batteries can burn and vent poisonous gas, and their terminals are live: do not drop, pierce or"
                            + " heat them, cover terminals, and send none that is damaged. Only people trained for dangerous"
                            + " goods pack, mark and hand them over, by the rules in force on that day.");
        }
    }

    /** What the papers are good for. */
    static void draft(PageBuilder page) {
        page.caution(
                "Draft",
                "This program drafts; it does not classify. A trained and appointed person checks every entry against the"
                        + " rules in force and signs. Until then nothing on this page may be handed to a carrier.");
    }
}
