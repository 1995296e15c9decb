package boltlore.report;

/** What stands on a page, one below the other. */
public sealed interface Block permits Heading, Note, Particulars, Table, BarCharts, Picture, Signatures {

    <R> R as(Cases<R> cases);

    /** What a writer must be able to write. */
    interface Cases<R> {
        R heading(Heading heading);

        R note(Note note);

        R particulars(Particulars particulars);

        R table(Table table);

        R charts(BarCharts charts);

        R picture(Picture picture);

        R signatures(Signatures signatures);
    }
}
