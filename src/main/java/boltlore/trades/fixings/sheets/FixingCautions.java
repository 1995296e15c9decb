package boltlore.trades.fixings.sheets;

import boltlore.report.PageBuilder;

/** What comes loose, falls and breaks. */
final class FixingCautions {

    private static final String LEAD = "Caution";

    private static final String TORQUE =
            "Torques here are data of the workshop: your own drawings and the makers' data sheets"
                    + " come first. Use a torque wrench that was checked, tighten crosswise in two steps, and never reuse a self-locking"
                    + " nut. Bolts that hold the drive, the battery, steering or brakes are never replaced by stainless steel or by a"
                    + " lower class without a new calculation by a competent person.";

    private static final String SAFETY =
            "Support drive unit and battery boxes by a hoist or table rated for them until every bolt"
                    + " is torqued; nobody works under a load on a jack. Battery joints are tightened with insulated tools by people"
                    + " trained for high voltage. A joint without a signature is an open joint.";

    private FixingCautions() {}

    static void on(PageBuilder page) {
        page.caution(LEAD, TORQUE);
    }

    static void safety(PageBuilder page) {
        page.caution(LEAD, SAFETY);
    }
}
