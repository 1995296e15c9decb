package boltlore.checking;

import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.math.RoundingMode;

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
        return number(mass.setScale(3, RoundingMode.HALF_UP)) + " kg";
    }

    static String number(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
