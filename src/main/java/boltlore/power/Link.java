package boltlore.power;

import boltlore.catalogue.Facts;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * One link of the chain that a charging current passes through.
 *
 * @param says what it is, as people call it
 * @param phases that it connects, or null where it sets no limit or the limit is not known
 * @param amps that it carries in each phase, or null where it sets no limit or the limit is not known
 */
public record Link(
        String says, @Nullable Integer phases, @Nullable BigDecimal amps) {

    /** What the mains are called in a chain. */
    public static final String SUPPLY = "supply";

    /** What the on-board charger is called in a chain. */
    public static final String CHARGER = "charger";

    public static Link of(String says, Facts facts) {
        return new Link(says, facts.phases(), facts.amps());
    }
}
