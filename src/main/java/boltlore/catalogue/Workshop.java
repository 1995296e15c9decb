package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The workshop itself.
 *
 * @param labourPerHour in its currency
 * @param markUpPercent on cost
 * @param assemblyDays calendar days from the last part in store to the shipped kit
 * @param subSystems in printing order
 * @param aisles in walking order
 * @param prices how full costs and quotations are worked out, or null where the workshop has not written it down
 */
public record Workshop(
        String name,
        String place,
        Currency currency,
        BigDecimal labourPerHour,
        BigDecimal markUpPercent,
        int assemblyDays,
        List<String> languages,
        List<Stage> stages,
        List<String> subSystems,
        List<String> aisles,
        Map<String, Partner> partners,
        Map<String, String> suppliers,
        Map<String, Market> markets,
        Map<String, Supply> supplies,
        Map<String, Caution> cautions,
        CoatingShop coating,
        @Nullable PriceBook prices) {

    /** A workshop that works out no full cost. */
    public Workshop(
            String name,
            String place,
            Currency currency,
            BigDecimal labourPerHour,
            BigDecimal markUpPercent,
            int assemblyDays,
            List<String> languages,
            List<Stage> stages,
            List<String> subSystems,
            List<String> aisles,
            Map<String, Partner> partners,
            Map<String, String> suppliers,
            Map<String, Market> markets,
            Map<String, Supply> supplies,
            Map<String, Caution> cautions,
            CoatingShop coating) {
        this(
                name,
                place,
                currency,
                labourPerHour,
                markUpPercent,
                assemblyDays,
                languages,
                stages,
                subSystems,
                aisles,
                partners,
                suppliers,
                markets,
                supplies,
                cautions,
                coating,
                null);
    }
}
