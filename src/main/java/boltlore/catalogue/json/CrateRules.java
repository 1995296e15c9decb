package boltlore.catalogue.json;

import boltlore.catalogue.CrateType;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Wood;
import boltlore.json.ObjectReader;

/** What must hold within a kind of crate. */
final class CrateRules {

    private CrateRules() {}

    static void check(CrateType crate, ObjectReader reader) {
        if (reader.sound()) {
            sides(crate, reader);
            masses(crate, reader);
            if (crate.wood() == Wood.NONE && !crate.woodMark().isEmpty()) {
                reader.faultAt("woodMark", "a mark of treated wood", "none on what is not of wood", "Remove it.");
            }
        }
    }

    private static void sides(CrateType crate, ObjectReader reader) {
        if (!holds(crate.outside(), crate.inside())) {
            reader.faultAt("outsideMm", "smaller than its inside", "no side shorter than inside", "Check both.");
        }
    }

    private static void masses(CrateType crate, ObjectReader reader) {
        if (crate.payloadKg().signum() <= 0) {
            String own = crate.tareKg().add(crate.packingKg()).toPlainString();
            String found = crate.mostGrossKg().toPlainString() + " kg, which leaves nothing for parts";
            String expected = "more than the " + own + " kg of crate and packing";
            reader.faultAt("maxGrossKg", found, expected, "Check the three masses.");
        }
    }

    private static boolean holds(EnvelopeMm outside, EnvelopeMm inside) {
        return outside.length() >= inside.length()
                && outside.width() >= inside.width()
                && outside.height() >= inside.height();
    }
}
