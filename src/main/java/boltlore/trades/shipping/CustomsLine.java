package boltlore.trades.shipping;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Goods of one customs code and origin.
 *
 * @param hs code as the part master has it, or empty where nobody has said
 * @param origin country (ISO 3166 alpha-2), or empty
 * @param pieces of all that is counted, with spares
 * @param measured what is measured out and not counted: '7 l'
 * @param value share of the selling price, in the minor unit's digits; null where the order has no price
 */
public record CustomsLine(
        String hs,
        String origin,
        List<Goods> goods,
        BigDecimal pieces,
        List<String> measured,
        BigDecimal netKg,
        @Nullable BigDecimal value) {}
