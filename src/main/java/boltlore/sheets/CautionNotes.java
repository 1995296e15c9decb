package boltlore.sheets.bill;

import boltlore.catalogue.Caution;
import boltlore.catalogue.Workshop;
import boltlore.sheets.PageBuilder;
import java.util.Collection;

/** Puts cautions on a page, in the page's language. */
final class CautionNotes {

    private CautionNotes() {}

    /** The cautions with these codes, in their order; a code that the workshop does not know says nothing. */
    static void add(PageBuilder page, Collection<String> codes, Workshop workshop, String lead, String language) {
        for (String code : codes) {
            Caution caution = workshop.cautions().get(code);
            if (caution != null) {
                page.caution(lead, caution.says().in(language));
            }
        }
    }
}
