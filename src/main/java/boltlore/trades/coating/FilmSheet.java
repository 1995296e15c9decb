package boltlore.trades.coating;

import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.measure.Digits;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.FindingsTable;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.StoppedOrder;
import java.util.List;
import java.util.stream.Collectors;

/** Film and powder of a plan as the coating shop wrote them down, assessed. */
public final class FilmSheet {

    private static final String THEORETICAL =
            "Theoretical is area, target film and specific gravity, over the transfer efficiency of the plan. Up to "
                    + PowderVerdict.USUAL_PERCENT + " % off it is usual.";

    private static TableSpec<FilmVerdict> batches() {
        return TableSpec.<FilmVerdict>named("batches")
                .text("batch", "Batch", film -> String.valueOf(film.batch().number()))
                .said("finish", "Finish", 30, film -> film.batch().finish().says())
                .whole("pieces", "Pieces", "", film -> film.batch().pieces())
                .whole("least", "Min. mean", "µm", film -> film.demand().leastUm())
                .decimal(
                        "floor",
                        "Min. reading",
                        "µm",
                        1,
                        film -> film.demand().acceptance().floorUm())
                .whole("most", "Maximum", "µm", film -> film.demand().mostUm())
                .whole("to-read", "To read", "", film -> film.sample().pieces())
                .whole("read", "Read", "", FilmVerdict::read)
                .whole("short", "Below limit", "", FilmVerdict::shortfalls)
                .whole("allowed", "Allowed", "", film -> film.sample().acceptUpTo())
                .text("decision", "Decision", FilmSheet::decision)
                .text("look", "Action", 36, FilmSheet::action)
                .text("rework", "To rework", 40, FilmSheet::toRework);
    }

    private static final TableSpec<PieceVerdict> PIECES = TableSpec.<PieceVerdict>named("pieces")
            .text("part", "Part", piece -> piece.reading().part())
            .text("piece", "Piece", piece -> piece.reading().piece())
            .whole("coating", "Coating", "", piece -> piece.reading().coating())
            .date("on", "Read on", piece -> piece.reading().on())
            .column(
                    Column.text("readings", "Readings").in("µm"),
                    piece -> Cell.of(
                            piece.reading().um().stream().map(Digits::plain).collect(Collectors.joining(", "))))
            .decimal("mean", "Mean", "µm", 1, PieceVerdict::mean)
            .decimal("lowest", "Lowest", "µm", 1, PieceVerdict::lowest)
            .text("verdict", "Assessment", 40, FilmSheet::assessment);

    /** A piece to be coated again, with its batch. */
    private record Rework(FilmVerdict film, PieceVerdict piece) {}

    /** What {@code coat --again} takes. */
    private static final TableSpec<Rework> AGAIN = TableSpec.<Rework>named("again")
            .text("batch", "Batch", each -> String.valueOf(each.film().batch().number()))
            .said("finish", "Finish", 30, each -> each.film().batch().finish().says())
            .text("part", "Part", each -> each.piece().reading().part())
            .text("piece", "Piece", each -> each.piece().reading().piece())
            .whole("coating", "Coating", "", each -> each.piece().reading().coating() + 1)
            .text("why", "Why", 40, each -> each.piece().why())
            .box(Column.blank("how", "How, by engineering"))
            .box(Column.tick("done", "Done"));

    private static final String REWORK =
            "Engineering says of each whether it is stripped or coated over. 'boltlore coat ORDER… --again FILE' plans just"
                    + " these pieces, FILE being this table as CSV; their readings then come with the number of that coating.";

    private static final TableSpec<PowderVerdict> POWDER = TableSpec.<PowderVerdict>named("powder")
            .text("run", "Run", powder -> String.valueOf(powder.run().number()))
            .text("powder", "Powder", powder -> powder.run().powder())
            .decimal("theory", "Theoretical", "kg", 3, PowderVerdict::theoryKg)
            .decimal("issued", "Issued", "kg", 3, PowderVerdict::issuedKg)
            .decimal("difference", "Difference", "%", 1, PowderVerdict::differencePercent)
            .decimal("on-parts", "On the parts", "%", 1, PowderVerdict::onPartsPercent)
            .text("word", "Assessment", powder -> powder.unusual() ? "check" : "usual");

    private FilmSheet() {}

    public static Report compose(RecordVerdict verdict, CoatJob job) {
        String orders = CoatSheet.orders(job.plan());
        String footer = "Film and powder, " + orders;
        Findings findings = verdict.findings()
                .and(job.stopped().stream().map(StoppedOrder::finding).collect(Findings.collected()));
        ReportBuilder report = CoatSheet.begun("coating-record", "Film and powder of a coating plan", job)
                .found(findings)
                .glance(new Heading("Film and powder, " + orders, Look.TITLE));
        PageBuilder first = Page.named("Assessment").landscape().footer(footer).title("Film and powder, assessed");
        FindingsTable.add(first, findings, job.workshop().language());
        if (!verdict.film().isEmpty()) {
            first.heading("Film, batch by batch")
                    .add(rules(verdict))
                    .add(batches().box(Column.signature("by", "Released by")).of(verdict.film()));
            report.glance(batches().of(verdict.film()).build(), rules(verdict).build());
        }
        if (!verdict.powder().isEmpty()) {
            first.heading("Powder issued").note(THEORETICAL).add(POWDER.of(verdict.powder()));
            report.glance(POWDER.of(verdict.powder()).build());
        }
        report.page(first);
        pieces(report, verdict, job.workshop().language(), footer);
        return report.build();
    }

    /** What was read of each piece, and which of them come back. */
    private static void pieces(ReportBuilder report, RecordVerdict verdict, String language, String footer) {
        if (verdict.film().stream().anyMatch(film -> !film.pieces().isEmpty())) {
            report.page(pieces(verdict, language, footer));
        }
        List<Rework> rework = verdict.film().stream()
                .flatMap(film -> film.toRework().stream().map(piece -> new Rework(film, piece)))
                .toList();
        if (!rework.isEmpty()) {
            report.page(Page.named("To rework")
                    .landscape()
                    .footer(footer)
                    .title("To rework and coat again")
                    .note(REWORK)
                    .add(AGAIN.of(rework)));
        }
    }

    /** By what each batch is accepted, with the figures and where they come from. */
    private static ParticularsBuilder rules(RecordVerdict verdict) {
        ParticularsBuilder rules = Particulars.named("rules");
        verdict.film().forEach(film -> {
            int batch = film.batch().number();
            rules.say("rule-" + batch, "Rule, batch " + batch, FilmPage.rule(film.batch()));
        });
        return rules.say("sources", "Sources", FilmPage.SOURCES);
    }

    private static PageBuilder pieces(RecordVerdict verdict, String language, String footer) {
        TableBuilder pieces = PIECES.empty();
        verdict.film().stream().filter(film -> !film.pieces().isEmpty()).forEach(film -> {
            int batch = film.batch().number();
            pieces.group(
                    "batch-" + batch,
                    "Batch " + batch + ", " + film.batch().finish().says().in(language));
            film.pieces().forEach(piece -> PIECES.add(pieces, "", piece));
        });
        return Page.named("Pieces")
                .landscape()
                .footer(footer)
                .title("Film readings, piece by piece")
                .add(pieces);
    }

    private static String decision(FilmVerdict film) {
        return switch (film.decision()) {
            case ACCEPTED -> "accepted";
            case REWORK -> "rework, the others accepted";
            case REJECTED -> "rejected";
            case READ_MORE -> film.pieces().isEmpty() ? "not read" : "read more";
        };
    }

    private static String assessment(PieceVerdict piece) {
        String verdict = piece.good() ? "accepted" : piece.why();
        return piece.replaced() ? verdict + "; replaced by a later reading" : verdict;
    }

    private static String toRework(FilmVerdict film) {
        return film.toRework().stream().map(piece -> piece.reading().which()).collect(Collectors.joining(", "));
    }

    private static String action(FilmVerdict film) {
        List<String> kinds = film.findings()
                .map(Finding::kind)
                .map(kind -> kind.code())
                .distinct()
                .toList();
        return String.join("; ", kinds);
    }
}
