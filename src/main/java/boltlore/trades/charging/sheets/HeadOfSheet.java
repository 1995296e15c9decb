package boltlore.trades.charging.sheets;

import boltlore.bill.Bill;
import boltlore.catalogue.Pack;
import boltlore.catalogue.Role;
import boltlore.catalogue.Workshop;
import boltlore.choices.Choices;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.charging.Charging;
import boltlore.trades.charging.Figures;
import boltlore.trades.charging.Mains;

/** Who it is for, and what it is charged with. */
final class HeadOfSheet {

    private HeadOfSheet() {}

    static ParticularsBuilder of(Charging charging, Workshop workshop) {
        Bill bill = charging.bill();
        Choices choices = bill.resolved().choices();
        ParticularsBuilder says = Particulars.named("charging")
                .say("workshop", "Workshop", workshop.name() + ", " + workshop.place())
                .say("order", "Order", bill.order().name() + ", " + bill.order().customer())
                .say("vehicle", "Donor vehicle", choices.family().says().english())
                .say("inlet", "Inlet", chosen(choices, Role.INLET))
                .say("charger", "Charger", chosen(choices, Role.CHARGER));
        Mains mains = charging.mains();
        if (mains != null) {
            says.say("supply", "Supply", mains.says() + ": " + mains.figures());
        }
        Pack pack = charging.fitted().pack();
        return pack == null ? says : says.say("pack", "Battery pack", pack(pack));
    }

    private static String chosen(Choices choices, Role role) {
        return choices.inRole(role).map(value -> value.says().english()).orElse("not chosen");
    }

    private static String pack(Pack pack) {
        return pack.says() + ": " + Figures.volts(pack.nominalVolts()) + ", " + Figures.number(pack.usableKwh(), 1)
                + " kWh usable";
    }
}
