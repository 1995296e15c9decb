package boltlore.cli;

import boltlore.json.JsonOut;
import boltlore.trades.coating.FilmVerdict;
import boltlore.trades.coating.PieceVerdict;
import boltlore.trades.coating.PowderVerdict;
import boltlore.trades.coating.RecordVerdict;
import boltlore.trades.coating.sheets.FilmRule;
import boltlore.trades.coating.sheets.PowderVerdictWords;
import boltlore.trades.coating.sheets.RecordWords;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;

/** What was judged, as the terminal and as programs get it. */
final class FilmAnswer {

    private FilmAnswer() {}

    static void print(Screen screen, RecordVerdict verdict) {
        verdict.film().forEach(film -> print(screen, film));
        verdict.powder().forEach(powder -> print(screen, powder));
        if (verdict.film().isEmpty() && verdict.powder().isEmpty()) {
            screen.line("Nothing is filled in.");
        }
    }

    private static void print(Screen screen, FilmVerdict film) {
        String finish = film.batch().finish().says().english();
        screen.line("Batch " + film.batch().number() + ", " + finish + ": " + FilmRule.decision(film));
        film.pieces().forEach(piece -> print(screen, piece, RecordWords.verdict(piece, film.demand())));
        if (!RecordWords.look(film).isEmpty()) {
            screen.line("  " + RecordWords.look(film));
        }
        screen.wrapped(2, "rule: " + FilmRule.of(film));
    }

    private static void print(Screen screen, PieceVerdict piece, String words) {
        if (!words.equals("good")) {
            String which = (piece.reading().part() + " " + piece.reading().piece()).strip();
            screen.line("  " + which + ": " + words + ", mean " + rounded(piece.mean()) + " µm");
        }
    }

    private static void print(Screen screen, PowderVerdict powder) {
        String sign = powder.differencePercent().signum() > 0 ? "+" : "";
        screen.line("Run " + powder.run().number() + ", " + powder.run().powder() + ": "
                + powder.issuedKg().toPlainString() + " kg issued, "
                + powder.theoryKg().setScale(3, RoundingMode.HALF_UP) + " kg by theory, " + sign
                + rounded(powder.differencePercent()) + " %: " + PowderVerdictWords.of(powder));
    }

    private static BigDecimal rounded(BigDecimal number) {
        return number.setScale(1, RoundingMode.HALF_UP);
    }

    static String json(RecordVerdict verdict, List<Path> written) {
        return JsonOut.object()
                .put("written", JsonOut.texts(written))
                .put("batches", JsonOut.list(verdict.film(), FilmAnswer::film))
                .put("powder", JsonOut.list(verdict.powder(), FilmAnswer::powder))
                .written()
                .stripTrailing();
    }

    private static JsonOut film(FilmVerdict film) {
        return JsonOut.object()
                .put("batch", film.batch().number())
                .put("decision", film.decision())
                .put("pieces", film.batch().pieces())
                .put("toRead", film.sample().pieces())
                .put("read", film.pieces().size())
                .put("mayFallShort", film.sample().acceptUpTo())
                .put("short", film.shortfalls())
                .putIfAny("notRead", film.unread())
                .put("rule", FilmRule.of(film))
                .put("readings", JsonOut.list(film.pieces(), piece -> piece(piece, film)));
    }

    private static JsonOut piece(PieceVerdict piece, FilmVerdict film) {
        return JsonOut.object()
                .put("part", piece.reading().part())
                .put("piece", piece.reading().piece())
                .put("mean", piece.mean())
                .put("lowest", piece.reading().lowest())
                .put("verdict", RecordWords.verdict(piece, film.demand()));
    }

    private static JsonOut powder(PowderVerdict powder) {
        return JsonOut.object()
                .put("run", powder.run().number())
                .put("powder", powder.run().powder())
                .put("theoryKg", powder.theoryKg())
                .put("issuedKg", powder.issuedKg())
                .put("differencePercent", powder.differencePercent())
                .put("word", PowderVerdictWords.of(powder));
    }
}
