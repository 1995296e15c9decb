package boltlore.trades.charging.sheets;

import boltlore.catalogue.Workshop;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.trades.charging.Charging;
import boltlore.trades.charging.Export;

/** The first page: what power comes from where, what limits it, what the outlet gives, what was found. */
final class ChargingPage {

    private static final String TIME =
            "Hours from 20 to 80 % = 0.6 × usable energy / (power × efficiency of the charger)."
                    + " Full power is taken all the way: that a pack takes less when it is nearly full, cold or hot is not counted,"
                    + " nor what the vehicle uses meanwhile, so the real time is longer.";

    private static final String STANDS_FOR =
            "Power on alternating current is the least phases × the voltage of one phase"
                    + " × the least current, and no more than the charger's rated power; on direct current the lesser current of"
                    + " inlet and pack × the pack's nominal voltage. A cable or post that brings no more than a smaller one is left"
                    + " out.";

    private ChargingPage() {}

    static PageBuilder of(Charging charging, Workshop workshop, String footer) {
        PageBuilder page = Page.named("Charging").footer(footer);
        page.title("Charging and high voltage").add(HeadOfSheet.of(charging, workshop));
        ChainDrawing.of(charging).ifPresent(page::picture);
        page.heading("Power and time").add(WaysTable.of(charging)).note(TIME).note(STANDS_FOR);
        Export export = charging.export();
        if (export != null) {
            page.heading("Export to a load").add(ExportTable.of(charging, export));
        }
        page.heading("What was found").add(FoundTable.of(charging));
        ChargingCautions.on(page);
        return page.signatures("Looked at by");
    }
}
