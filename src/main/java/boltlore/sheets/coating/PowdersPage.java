package boltlore.sheets.coating;

import boltlore.catalogue.CoatingShop;
import boltlore.coating.CoatPlan;
import boltlore.sheets.Page;
import boltlore.sheets.PageBuilder;

/** For the booth: which powder after which. */
final class PowdersPage {

    private PowdersPage() {}

    static PageBuilder of(CoatPlan plan, CoatingShop shop, String footer) {
        PageBuilder page = Page.named("Powders").landscape().footer(footer);
        page.title("Powders in turn");
        CoatingCautions.on(page, CoatingCautions.AT_THE_BOOTH);
        return page.note(PowderRunWords.of(plan, shop)).add(PowderRunsTable.of(plan, shop));
    }
}
