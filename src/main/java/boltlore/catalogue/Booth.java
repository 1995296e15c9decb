package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A spray booth and the powder that is in it, or empty.
 *
 * @param reclaimPercent share of the powder that ends on parts where the booth gathers overspray and it is sprayed again,
 *     or null where it gathers none
 */
public record Booth(
        String name,
        String says,
        String holdsPowder,
        @Nullable BigDecimal reclaimPercent) {

    public Booth(String name, String says, String holdsPowder) {
        this(name, says, holdsPowder, null);
    }
}
