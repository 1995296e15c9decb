package boltlore.catalogue;

import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The workshop itself.
 *
 * @param labourPerHour in its currency
 * @param assemblyDays calendar days from the last part in store to the shipped kit
 * @param language that its own sheets speak
 * @param languages in which customers' papers are written
 * @param bags how bags are called, by their code; crates of their own are named in {@link Shipping}
 * @param subSystems in printing order
 * @param aisles in walking order
 */
public record Workshop(
        String name,
        String place,
        Currency currency,
        BigDecimal labourPerHour,
        int assemblyDays,
        String language,
        List<String> languages,
        List<Stage> stages,
        Map<String, Wording> bags,
        List<String> subSystems,
        List<String> aisles,
        Map<String, Partner> partners,
        Map<String, String> suppliers,
        Map<String, Market> markets,
        Map<String, Supply> supplies,
        Map<String, Caution> cautions,
        CoatingShop coating) {

    /** What a fit stage is called; a stage that is not listed goes by its name. */
    public String stageSays(String name, String language) {
        return stages.stream()
                .filter(stage -> stage.name().equals(name))
                .map(stage -> stage.says().in(language))
                .findFirst()
                .orElse(name);
    }

    /** The cautions with these codes, in their order; a code that is not known says nothing. */
    public List<Caution> cautionsOf(Collection<String> codes) {
        return codes.stream()
                .flatMap(code -> Stream.ofNullable(cautions.get(code)))
                .toList();
    }
}
