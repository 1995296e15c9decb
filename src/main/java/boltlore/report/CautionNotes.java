package boltlore.report;

import boltlore.catalogue.Workshop;
import boltlore.findings.Sentences;
import java.util.Collection;

/** Puts cautions on a page, in the page's language. */
public final class CautionNotes {

    private CautionNotes() {}

    /** The cautions with these codes, in their order; a code that the workshop does not know says nothing. */
    public static void add(
            PageBuilder page, Collection<String> codes, Workshop workshop, String lead, String language) {
        workshop.cautionsOf(codes)
                .forEach(caution ->
                        page.caution(caution.code(), lead, caution.says().in(language)));
    }

    /** The cautions that the workshop wants on every sheet of that name. */
    public static void always(PageBuilder page, String sheet, Workshop workshop, String language) {
        workshop.cautions().values().stream()
                .filter(caution -> caution.always().contains(sheet))
                .forEach(caution -> page.caution(
                        caution.code(),
                        Sentences.word("caution", language),
                        caution.says().in(language)));
    }
}
