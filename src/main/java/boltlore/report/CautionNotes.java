package boltlore.report;

import boltlore.catalogue.Workshop;
import java.util.Collection;

/** Puts cautions on a page, in the page's language. */
public final class CautionNotes {

    private CautionNotes() {}

    /** The cautions with these codes, in their order; a code that the workshop does not know says nothing. */
    public static void add(
            PageBuilder page, Collection<String> codes, Workshop workshop, String lead, String language) {
        workshop.cautionsOf(codes)
                .forEach(caution -> page.caution(lead, caution.says().in(language)));
    }
}
