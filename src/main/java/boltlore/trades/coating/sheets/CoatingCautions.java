package boltlore.trades.coating.sheets;

import boltlore.catalogue.Workshop;
import boltlore.report.PageBuilder;
import boltlore.trades.coating.CoatPlan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What can hurt in a coating shop, in words: what the kits ask for, and what is true of every batch. */
final class CoatingCautions {

    /** On each batch's own page, which may be torn off the first. */
    static final String REMINDER =
            "Hot oven and hot parts; powder in air explodes from a spark; heavy pieces; acids in pre-treatment. Read the"
                    + " cautions on the first page, and keep to your local codes.";

    /** Where the booth is cleaned down. */
    static final String AT_THE_BOOTH =
            "Powder in air explodes from a spark: extraction on, no flame, earthed, breathing protection. Clean down with a"
                    + " vacuum cleaner meant for explosive dust, never with compressed air; keep to your local codes.";

    /** Where loads are hung and cured. */
    static final String AT_THE_OVEN =
            "Powder in air explodes from a spark: extraction on, no flame, hooks and parts earthed, breathing protection."
                    + " Rated hooks, nobody below a hanging load, two people or a hoist for heavy pieces. Oven and parts"
                    + " burn long after they come out. Trained people only; keep to your local codes.";

    /** For the coater, who works by rules of its own. */
    static final String FOR_THE_COATER =
            "Edges can be sharp and pieces heavy: gloves, and two people or a hoist. Coat by your own safety rules and"
                    + " local codes.";

    private record Always(String code, String says) {}

    private static final List<Always> IN_OUR_SHOP = List.of(
            new Always(
                    "oven",
                    "Oven and parts burn long after they come out: gloves, sleeves, face shield; let loads cool. Purge"
                            + " before lighting as the oven's maker and the local gas and fire codes say; trained people"
                            + " only."),
            new Always(
                    "powder-dust",
                    "Powder in air can explode. Booth and extraction are a hazardous zone: no flame, no grinding, no"
                            + " phone; extraction on first; earth part, hook, gun and operator; wear breathing"
                            + " protection. A competent person sets zones and equipment by your local codes."),
            new Always(
                    "lift-two",
                    "Heavy pieces are lifted by two people or a hoist; follow your local rules for lifting."),
            new Always(
                    "hanging",
                    "Hooks, wires and bars are rated, and looked at before each load; nobody stands below a hanging"
                            + " piece."),
            new Always(
                    "pre-treatment",
                    "Acids, alkalis and blasting dust: goggles, gloves, apron, breathing protection, eye wash at hand;"
                            + " never water into acid; handle and dispose by the safety data sheets and your local"
                            + " rules."));

    private static final String LEAD = "Caution";

    private CoatingCautions() {}

    static void on(PageBuilder page, String says) {
        page.caution(LEAD, says);
    }

    /** All that apply to the plan; the catalogue's own sentence takes the place of one here with the same code. */
    static void on(PageBuilder page, CoatPlan plan, Workshop workshop) {
        Map<String, String> cautions = new LinkedHashMap<>();
        if (!plan.batches().isEmpty()) {
            IN_OUR_SHOP.forEach(always -> cautions.put(always.code(), always.says()));
        }
        plan.cautions().stream()
                .map(workshop.cautions()::get)
                .filter(Objects::nonNull)
                .forEach(caution -> cautions.put(caution.code(), caution.says().english()));
        cautions.values().forEach(says -> on(page, says));
    }
}
