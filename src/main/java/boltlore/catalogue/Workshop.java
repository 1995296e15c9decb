package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Map;

/**
 * The workshop itself.
 *
 * @param labourPerHour in its currency
 * @param markUpPercent on cost
 * @param assemblyDays calendar days from the last part in store to the shipped kit
 * @param subSystems in printing order
 * @param aisles in walking order
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
        CoatingShop coating) {}
