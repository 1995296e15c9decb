package boltlore.trades.weighing.sheets;

import boltlore.catalogue.Chassis;
import boltlore.catalogue.Family;
import boltlore.catalogue.Role;
import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import boltlore.report.Kind;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.weighing.OnAxles;
import boltlore.trades.weighing.Weighing;

/** Who it is for, which vehicle, and its masses in short. */
record HeadOfSheet(Weighing weighing, Family family, Workshop workshop) {

    private static final Kind KG = Kind.decimal(1);

    ParticularsBuilder particulars() {
        Order order = weighing.bill().order();
        ParticularsBuilder says = Particulars.named("weights")
                .say("workshop", "Workshop", workshop.name() + ", " + workshop.place())
                .say("order", "Order", order.name() + ", " + order.customer())
                .say("vehicle", "Donor vehicle", family.says().english() + era());
        OnAxles onAxles = weighing.onAxles();
        if (onAxles != null) {
            Chassis chassis = onAxles.chassis();
            says.say("wheelbase", "Wheelbase", chassis.wheelbaseMm() + " mm");
            tracks(says, chassis);
        }
        says.say("removed", "Comes off (kg)", KG, weighing.removedKg())
                .say("added", "The kit (kg)", KG, weighing.addedKg());
        return weighing.extras().isEmpty() ? says : says.say("extras", "Extras (kg)", KG, weighing.extrasKg());
    }

    private String era() {
        return weighing.bill()
                .resolved()
                .choices()
                .inRole(Role.ERA)
                .map(value -> "; " + value.says().english())
                .orElse("");
    }

    private static void tracks(ParticularsBuilder says, Chassis chassis) {
        if (chassis.frontTrackMm() != null && chassis.rearTrackMm() != null) {
            says.say("track", "Track, front, rear", chassis.frontTrackMm() + ", " + chassis.rearTrackMm() + " mm");
        }
    }
}
