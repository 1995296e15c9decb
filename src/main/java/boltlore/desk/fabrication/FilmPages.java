package boltlore.desk.fabrication;

import boltlore.book.db.Reading;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.stores.FilmDesk;
import boltlore.book.stores.FilmDesk.Film;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.DrawnSheet;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import boltlore.measure.Digits;
import boltlore.report.Report;
import boltlore.trades.KitInWork;
import boltlore.trades.coating.CoatJob;
import boltlore.trades.coating.FilmSheet;
import boltlore.trades.coating.FilmToRead;
import boltlore.trades.coating.PieceVerdict;
import boltlore.trades.coating.RecordVerdict;
import boltlore.trades.coating.written.ShopRecord;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Film readings typed into a form: each piece is judged as soon as it is typed, by the same rule and code as the record in
 * the end, and the record is kept in the book.
 */
public final class FilmPages {

    private final Workshop workshop;
    private final KitsAtHand kits;

    FilmPages(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.kits = kits;
    }

    void open(Doors doors) {
        doors.look("/fabrication/film", this::form);
        doors.look("/fabrication/film/judge", this::judgeOne);
        doors.act("/fabrication/film", this::keep);
        doors.look("/fabrication/film/judged", this::form);
        doors.act("/fabrication/film/judged", this::judgeAll);
        doors.look("/fabrication/film/record", this::kept);
    }

    private Outcome<CoatJob> job(Reading reading, List<String> orders, Call call) {
        return kits.of(reading, orders, call.today()).then(FilmPages::job);
    }

    private static Outcome<CoatJob> job(List<KitInWork> found) {
        return CoatJob.of(found, List.of(), null)
                .map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(
                        Fault.of("", "orders of which nothing is coated", "one with a coated part", "")));
    }

    private Answer form(Call call) {
        Typed typed = new Typed(call);
        List<String> orders = typed.texts("order", "Order", TextShape.ORDER_NAME);
        return workshop.book().read(reading -> {
            Outcome<CoatJob> job = typed.sound().then(ok -> job(reading, orders, call));
            if (!(job instanceof Outcome.Sound<CoatJob> sound)) {
                return new Answer.Missing(Sentences.missing(job.faults()));
            }
            return Answer.page(
                    "Film readings of " + String.join(", ", orders),
                    "fabrication/film.jte",
                    new FilmForm(
                            Told.of(reading, call),
                            orders,
                            query(orders),
                            call.said("reason"),
                            batches(sound.value(), call)));
        });
    }

    /** Judges all that is typed and keeps nothing of it: what the key for the next line does, too. */
    private Answer judgeAll(Call call) {
        Answer page = form(call);
        return page instanceof Answer.Shown shown && shown.page() instanceof FilmForm form && form.filled() == 0
                ? shown.refusing(List.of("Found nothing filled in, expected readings of a piece at least."))
                : page;
    }

    /** With what was typed where the form comes back. */
    private List<FilmForm.Batch> batches(CoatJob job, Call call) {
        return FilmToRead.of(job.plan()).stream()
                .map(piece -> {
                    List<String> typed = FilmForm.typed(call, piece);
                    return new FilmForm.Row(
                            piece, workshop.names().part(piece.part()), typed, said(judged(job, piece, typed, call)));
                })
                .collect(Collectors.groupingBy(row -> row.piece().batch(), TreeMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(FilmForm.Batch::new)
                .toList();
    }

    private static String query(List<String> orders) {
        return orders.stream().map(order -> "order=" + CutPages.coded(order)).collect(Collectors.joining("&"));
    }

    /** What is to be said of one piece as it is typed. */
    private Answer judgeOne(Call call) {
        Typed typed = new Typed(call);
        List<String> orders = typed.texts("order", "Order", TextShape.ORDER_NAME);
        Outcome<String> says = typed.sound()
                .then(ok -> workshop.book().read(reading -> job(reading, orders, call)))
                .then(job -> FilmToRead.of(job.plan()).stream()
                        .filter(piece -> piece.part().equals(call.said("part"))
                                && piece.mark().equals(call.said("piece")))
                        .findFirst()
                        .map(piece -> judged(job, piece, FilmForm.typed(call, piece), call))
                        .orElseGet(() -> Outcome.sound("not a piece of this plan")));
        return Answer.page("Judged", "frame/judged.jte", said(says));
    }

    private static String said(Outcome<String> says) {
        return says instanceof Outcome.Sound<String> sound
                ? sound.value()
                : says.faults().stream()
                        .map(fault -> "found " + fault.found() + ", expected " + fault.expected())
                        .distinct()
                        .collect(Collectors.joining("; "));
    }

    private static Outcome<String> judged(CoatJob job, FilmToRead piece, List<String> typed, Call call) {
        if (typed.stream().allMatch(String::isEmpty)) {
            return Outcome.sound("");
        }
        byte[] csv =
                FilmForm.record(List.of(FilmForm.csv(piece, typed, call.today().toString())));
        return ShopRecord.read("typed", csv, job.plan())
                .then(record -> Outcome.sound(
                        RecordVerdict.of(job.plan(), true, record.film(), record.issued(), job.workshop())
                                .film()
                                .stream()
                                .flatMap(film -> film.pieces().stream())
                                .findFirst()
                                .map(FilmPages::says)
                                .orElse("")));
    }

    private static String says(PieceVerdict verdict) {
        BigDecimal mean = verdict.mean();
        String of = mean == null ? "" : ", mean " + Digits.plain(mean.setScale(1, RoundingMode.HALF_UP)) + " µm";
        return (verdict.good() ? "accepted" : "NOT accepted: " + verdict.why()) + of;
    }

    private Answer keep(Call call) {
        Typed typed = new Typed(call);
        List<String> orders = typed.texts("order", "Order", TextShape.ORDER_NAME);
        String why = typed.sentence("reason", "Remark");
        return Acting.done(
                call,
                "/fabrication/film/record?" + query(orders),
                by -> typed.sound()
                        .then(ok -> workshop.book().read(reading -> job(reading, orders, call)))
                        .then(job -> asJudged(job, call))
                        .then(job -> {
                            String on = call.today().toString();
                            byte[] csv = FilmForm.record(FilmToRead.of(job.plan()).stream()
                                    .map(piece -> FilmForm.csv(piece, FilmForm.typed(call, piece), on))
                                    .toList());
                            return verdict(csv, job).then(verdict -> {
                                Report report = FilmSheet.compose(verdict, job);
                                Film film = new Film(
                                        job.plan(), verdict, !report.findings().stops(), codes(report));
                                return new FilmDesk(
                                                workshop.book(),
                                                by,
                                                workshop.bench().catalogue())
                                        .keep(orders, csv, film, why);
                            });
                        }),
                this::form);
    }

    /** What is kept is as much as was judged before, on the page with the button that says how much it is. */
    private static Outcome<CoatJob> asJudged(CoatJob job, Call call) {
        long filled = FilmToRead.of(job.plan()).stream()
                .filter(piece -> !FilmForm.typed(call, piece).stream().allMatch(String::isEmpty))
                .count();
        return filled == 0 || call.said("filled").equals(String.valueOf(filled))
                ? Outcome.sound(job)
                : Outcome.faulty(Fault.of(
                        "",
                        filled + " pieces filled in",
                        "as many as were judged before keeping. Look how they are judged below, then keep them",
                        ""));
    }

    private static Outcome<Report> read(byte[] csv, CoatJob job) {
        return verdict(csv, job).then(verdict -> Outcome.sound(FilmSheet.compose(verdict, job)));
    }

    private static Outcome<RecordVerdict> verdict(byte[] csv, CoatJob job) {
        return ShopRecord.read("the form", csv, job.plan())
                .then(record -> record.film().stream().anyMatch(reading -> reading.isFilled())
                        ? Outcome.sound(
                                RecordVerdict.of(job.plan(), true, record.film(), record.issued(), job.workshop()))
                        : Outcome.faulty(Fault.of("", "nothing filled in", "readings of a piece at least", "")));
    }

    private static List<String> codes(Report report) {
        return report.findings().all().stream()
                .map(finding -> finding.kind().code())
                .distinct()
                .toList();
    }

    /** The last record of these orders, judged, as a sheet. */
    private Answer kept(Call call) {
        Typed typed = new Typed(call);
        List<String> orders = typed.texts("order", "Order", TextShape.ORDER_NAME);
        return workshop.book().read(reading -> {
            Outcome<Report> report = typed.sound()
                    .then(ok -> last(reading, orders.get(0)))
                    .then(csv -> job(reading, orders, call).then(job -> read(csv, job)));
            if (!(report instanceof Outcome.Sound<Report> sound)) {
                return new Answer.Missing(Sentences.missing(report.faults()));
            }
            return DrawnSheet.isAsked(call)
                    ? DrawnSheet.handed(sound.value(), call)
                    : Answer.page(
                            "Film of " + String.join(", ", orders) + ", assessed",
                            "fabrication/record.jte",
                            new Judged(
                                    Told.of(reading, call),
                                    orders,
                                    query(orders),
                                    DrawnSheet.of(
                                            sound.value(),
                                            call,
                                            "/fabrication/film/record?" + query(orders),
                                            "Assessment")));
        });
    }

    private static Outcome<byte[]> last(Reading reading, String order) {
        return reading.shop().records(order).stream()
                .filter(record -> record.of().equals("film"))
                .reduce((earlier, later) -> later)
                .map(record -> Outcome.sound(reading.contents().of(record.content())))
                .orElseGet(() -> Outcome.faulty(
                        Fault.of("order " + order, "no film record", "one that was kept", "Fill in the form first.")));
    }

    /** What became of it. */
    public record Judged(List<String> told, List<String> orders, String query, DrawnSheet sheet) {}
}
