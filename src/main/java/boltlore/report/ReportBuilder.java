package boltlore.report;

import boltlore.findings.Findings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Writes a {@link Report} down from front to back. */
public final class ReportBuilder {

    private final String file;
    private final String title;
    private final List<Page> pages = new ArrayList<>();
    private final List<Block> glance = new ArrayList<>();
    private final List<Table> data = new ArrayList<>();
    private Words words = Words.of("en");
    private Findings findings = Findings.NONE;
    private String subject = "";
    private String author = "";
    private LocalDate dated = LocalDate.of(2000, 1, 1);

    ReportBuilder(String file, String title) {
        this.file = file;
        this.title = title;
    }

    public ReportBuilder about(String subjectLine) {
        subject = subjectLine;
        return this;
    }

    public ReportBuilder by(String workshop) {
        author = workshop;
        return this;
    }

    public ReportBuilder dated(LocalDate day) {
        dated = day;
        return this;
    }

    public ReportBuilder in(String languageOfWords) {
        words = Words.of(languageOfWords);
        return this;
    }

    /** Written in English, and said in the language of these words when it is built. */
    public ReportBuilder in(Words inWhichItIsSaid) {
        words = inWhichItIsSaid;
        return this;
    }

    public ReportBuilder found(Findings all) {
        findings = all;
        return this;
    }

    /** What a terminal shows of it: a heading, a few facts, the one table that matters. */
    public ReportBuilder glance(Block... blocks) {
        glance.addAll(List.of(blocks));
        return this;
    }

    public ReportBuilder page(PageBuilder page) {
        pages.add(page.build());
        return this;
    }

    /** A table that is no page's, for programs alone. */
    public ReportBuilder data(TableBuilder table) {
        data.add(table.build());
        return this;
    }

    public Report build() {
        Spoken spoken = new Spoken(words);
        return new Report(
                file,
                spoken.say(title),
                spoken.say(subject),
                author,
                dated,
                words.language(),
                findings,
                spoken.blocks(glance),
                RoundedSums.noted(pages.stream().map(spoken::page).toList(), words.language()),
                data.stream().map(spoken::table).toList());
    }
}
