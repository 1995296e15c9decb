package boltlore.trades.shipping;

import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Part;
import boltlore.catalogue.Transport;
import boltlore.measure.Wording;
import boltlore.order.Extra;
import boltlore.trades.picking.Units;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * So many of one part in one finish that are packed at one fit stage and in one bag, or an extra of the order.
 *
 * @param stage fit stage; empty for an extra
 * @param bag bag or crate, or empty where it is packed loose
 * @param part null for a one-off that is only described
 * @param quantity in the part's unit, without spares
 * @param eachKg mass of one unit, its content included; null where nobody knows
 * @param size of one as it is packed; null where nobody measured
 * @param transport marking of dangerous goods, its own or of what it contains; null where it is none
 * @param extra null for what belongs to the kit
 */
public record Goods(
        String stage,
        String bag,
        @Nullable Part part,
        String finish,
        BigDecimal quantity,
        BigDecimal spares,
        @Nullable BigDecimal eachKg,
        @Nullable EnvelopeMm size,
        @Nullable Transport transport,
        @Nullable Extra extra) {

    /** What is packed: quantity with spares. */
    public BigDecimal packed() {
        return quantity.add(spares);
    }

    public String unit() {
        return part != null ? part.unit() : extra == null ? "" : extra.unit();
    }

    /** Whether it is one filled can or coil that cannot be divided, and not pieces. */
    boolean measured() {
        return Units.measured(unit());
    }

    /** Mass of that much of it in kg; nothing where nobody knows it. */
    public BigDecimal kg(BigDecimal amount) {
        return eachKg == null ? BigDecimal.ZERO : eachKg.multiply(amount);
    }

    /** Part number, or what the order says of a one-off. */
    public String name() {
        return part != null ? part.number().text() : extra == null ? "" : extra.says();
    }

    /** Number and name, for sentences. */
    public Wording says() {
        if (part == null) {
            return Wording.english(name());
        }
        Map<String, String> says = new HashMap<>(part.name().byLanguage());
        says.replaceAll((language, name) -> part.number().text() + " " + name);
        return new Wording(says);
    }
}
