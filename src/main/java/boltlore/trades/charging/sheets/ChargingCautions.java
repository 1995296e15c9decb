package boltlore.trades.charging.sheets;

import boltlore.report.PageBuilder;

/** What kills at high voltage, and what the figures are not good for. */
final class ChargingCautions {

    private static final String LEAD = "Caution";

    private static final String FIGURES =
            "These are computed figures from the family's data. The supply at the customer's is"
                    + " looked at, and its outlet fitted, by a licensed electrician by local codes; the charger's and the inlet's"
                    + " maker and the vehicle's approval come first.";

    private static final String LIVE =
            "High voltage kills. Work on it only by people who are trained and authorised for it:"
                    + " disconnect, wait until the DC link is discharged, lock out, prove dead with a tester that was proved before"
                    + " and after. Until the pack is taken apart it stays live whatever is disconnected. High-voltage cables outside enclosures have an orange cover.";

    private static final String FUSES =
            "Fuses and cables are chosen by a competent person by the makers' data sheets and your"
                    + " local codes; a fuse that blew is replaced only after its cause is found. Never bridge one. Where a cover or a service disconnect opens without tools, live parts"
                    + " stay out of reach of the test probes: IPXXD in cabin and luggage space, IPXXB elsewhere (UN Regulation 100,"
                    + " 5.1.1).";

    private static final String LOOM =
            "Measure resistors with the inlet unplugged and the loom dead. Looms of inlets with a"
                    + " cable code and of inlets with a handle latch are never swapped: the vehicle could draw more than the cable"
                    + " carries, or pull away plugged in.";

    private ChargingCautions() {}

    static void on(PageBuilder page) {
        page.caution(LEAD, FIGURES).caution(LEAD, LIVE);
    }

    static void highVoltage(PageBuilder page) {
        page.caution(LEAD, LIVE).caution(LEAD, FUSES);
    }

    static void loom(PageBuilder page) {
        page.caution(LEAD, LOOM);
    }
}
