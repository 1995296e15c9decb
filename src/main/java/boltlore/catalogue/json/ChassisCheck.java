package boltlore.catalogue.json;

import boltlore.catalogue.Chassis;
import boltlore.json.ObjectReader;
import java.math.BigDecimal;

/** A donor that is too heavy for its own axles before work begins has been weighed or copied wrongly. */
final class ChassisCheck {

    private ChassisCheck() {}

    static void check(Chassis chassis, ObjectReader reader) {
        axle(reader, "front", chassis.frontKg(), chassis.frontLimitKg());
        axle(reader, "rear", chassis.rearKg(), chassis.rearLimitKg());
        if (chassis.massKg().compareTo(chassis.grossKg()) > 0) {
            reader.fault(
                    "a base vehicle of " + chassis.massKg().toPlainString() + " kg and 'grossKg' "
                            + chassis.grossKg().toPlainString(),
                    "axle loads that add up to the gross limit at most",
                    "Weigh it again, or check the vehicle's plate.");
        }
    }

    private static void axle(ObjectReader reader, String axle, BigDecimal loadKg, BigDecimal limitKg) {
        if (loadKg.compareTo(limitKg) > 0) {
            reader.fault(
                    loadKg.toPlainString() + " kg on the donor's " + axle + " axle, which may carry "
                            + limitKg.toPlainString(),
                    "an axle load within the axle's limit",
                    "Weigh it again, or check the vehicle's plate.");
        }
    }
}
