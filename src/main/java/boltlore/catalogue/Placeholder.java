package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What stands in a part that was begun and not filled in yet: it can be read, and is told wherever the catalogue is checked. */
public final class Placeholder {

    /** Begins each text that waits for somebody. */
    public static final String TEXT = "?";

    /** In the workshop's currency, for one; a price that nobody asks. */
    public static final BigDecimal COST = new BigDecimal("1.111");

    /** Of one, in kg; to a tenth of a gram, which no list says. */
    public static final BigDecimal MASS_KG = new BigDecimal("0.1111");

    private Placeholder() {}

    /**
     * Says what of a part is still as it was begun.
     *
     * @param part any
     * @return each key with its value
     */
    public static List<String> in(Part part) {
        List<String> found = new ArrayList<>();
        if (isText(part.name().english())) {
            found.add("name '" + part.name().english() + "'");
        }
        Buying buying = part.buying();
        if (buying != null && isText(buying.orderCode())) {
            found.add("orderCode '" + buying.orderCode() + "'");
        }
        if (COST.compareTo(part.cost()) == 0) {
            found.add("cost " + COST.toPlainString());
        }
        BigDecimal massKg = part.massKg();
        if (massKg != null && MASS_KG.compareTo(massKg) == 0) {
            found.add("massKg " + MASS_KG.toPlainString());
        }
        return found;
    }

    /**
     * Whether a text still waits.
     *
     * @param text any
     * @return whether it begins as one that does
     */
    public static boolean isText(String text) {
        return text.startsWith(TEXT);
    }
}
