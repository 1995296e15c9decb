package boltlore.checking;

import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Part;
import boltlore.measure.Digits;
import java.math.BigDecimal;

/** How subjects and numbers are said in remarks. */
final class Said {

    private Said() {}

    static String part(Part part) {
        return "part " + part.number();
    }

    static String line(Family family, Line line) {
        return "line " + family.name() + "/" + line.name();
    }

    static String kg(BigDecimal mass) {
        return Digits.upTo(mass, 3) + " kg";
    }
}
