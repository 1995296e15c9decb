package boltlore.report;

import boltlore.catalogue.Caution;
import boltlore.catalogue.Workshop;
import boltlore.findings.Sentences;
import java.util.Collection;
import java.util.List;

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

    /** Codes of the cautions that the workshop wants on every sheet of that name. */
    public static List<String> alwaysOn(Workshop workshop, String sheet) {
        return workshop.cautions().values().stream()
                .filter(caution -> caution.always().contains(sheet))
                .map(Caution::code)
                .toList();
    }

    /** The cautions that the workshop wants on every sheet of that name. */
    public static void always(PageBuilder page, String sheet, Workshop workshop, String language) {
        add(page, alwaysOn(workshop, sheet), workshop, Sentences.word("caution", language), language);
    }
}
