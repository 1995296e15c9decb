package boltlore.report;

import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.findings.Sentences;

/** All findings of a sheet as one table, the worst first, with a box for who has checked each. */
public final class FindingsTable {

    private FindingsTable() {}

    /** Heading and table in the sheet's language; where nothing was found, a note that says so. */
    public static void add(PageBuilder page, Findings findings, String language) {
        alone(page.heading(word("heading", language)), findings, language);
    }

    /** As {@link #add}, under a heading that the page has already. */
    public static void alone(PageBuilder page, Findings findings, String language) {
        if (findings.isEmpty()) {
            page.note(word("none", language));
        } else {
            page.add(compose(findings, language));
        }
    }

    /** The table alone. */
    public static TableBuilder compose(Findings findings, String language) {
        return TableSpec.<Finding>named("findings")
                .text(
                        "severity",
                        word("severity", language),
                        12,
                        finding -> finding.severity().says(language))
                .text(
                        "kind",
                        word("kind", language),
                        22,
                        finding -> finding.kind().title(language))
                .text("sentence", word("says", language), 64, finding -> finding.says(language))
                .code("code", finding -> finding.kind().code())
                .box(Column.blank("checked", word("checked", language)))
                .of(findings.all());
    }

    private static String word(String key, String language) {
        return Sentences.word(key, language);
    }
}
