package boltlore.trades.cutting;

import boltlore.measure.Digits;
import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Hatching;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Outlines;
import boltlore.report.drawing.Point;
import boltlore.trades.cutting.LaidPiece.LaidEnd;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A bar from its head at the left: pieces in outline with their lengths and places, what is cut away hatched, what is kept
 * dashed. Along the bar to scale, the longest on the page as wide as the sheet; across the bar not.
 */
final class BarDrawing {

    private static final double WIDTH_MM = Drawing.PORTRAIT_MM;
    private static final double HEIGHT_MM = 17;
    private static final double EDGE_MM = 1;
    private static final double TOP_MM = 6;
    private static final double BOTTOM_MM = 13;
    private static final double WORDS_MM = 2.4;
    private static final double SMALL_MM = 1.8;

    private final SawnBar bar;
    private final double mmOnPaper;
    private final double acrossMm;
    private final List<Mark> marks = new ArrayList<>();

    private BarDrawing(SawnBar bar, double longestMm, double acrossMm) {
        this.bar = bar;
        this.mmOnPaper = (WIDTH_MM - 2 * EDGE_MM) / longestMm;
        this.acrossMm = acrossMm;
    }

    /** @param alike bars that are cut alike, at least one */
    static Drawing draw(List<SawnBar> alike, MaterialCuts cuts) {
        double longest = cuts.bars().stream()
                .mapToDouble(bar -> bar.lengthMm().doubleValue())
                .max()
                .orElse(1);
        BarDrawing drawing =
                new BarDrawing(alike.get(0), longest, cuts.stock().acrossMm().doubleValue());
        drawing.head(title(alike));
        drawing.pieces();
        drawing.rest();
        return new Drawing(WIDTH_MM, HEIGHT_MM, words(alike), drawing.marks);
    }

    private static String title(List<SawnBar> alike) {
        String numbers = alike.stream().map(bar -> String.valueOf(bar.number())).collect(Collectors.joining(", "));
        SawnBar first = alike.get(0);
        return (alike.size() == 1 ? "Bar " : alike.size() + " bars alike: ") + numbers + " - " + SawPage.source(first)
                + " " + Digits.plain(first.lengthMm());
    }

    private static String words(List<SawnBar> alike) {
        SawnBar bar = alike.get(0);
        String pieces = bar.pieces().stream()
                .map(piece -> Digits.plain(piece.cut().lengthMm()))
                .collect(Collectors.joining(" | "));
        String rest = SawPage.offcut(bar).isEmpty()
                ? ""
                : " | " + Digits.plain(bar.restMm()) + " " + (bar.isKept() ? "kept" : "scrap");
        return title(alike) + " mm: " + pieces + rest;
    }

    private double x(BigDecimal mm) {
        return EDGE_MM + mm.doubleValue() * mmOnPaper;
    }

    private void head(String title) {
        marks.add(Mark.from(new Point(EDGE_MM, TOP_MM / 2 - 0.4), title, WORDS_MM));
        marks.add(Mark.dashed(Outlines.box(x(BigDecimal.ZERO), TOP_MM, x(bar.lengthMm()), BOTTOM_MM)));
        BigDecimal first = bar.pieces().get(0).fromMm();
        marks.addAll(Hatching.draw(x(BigDecimal.ZERO), TOP_MM, x(first), BOTTOM_MM));
    }

    private void pieces() {
        for (int i = 0; i < bar.pieces().size(); i++) {
            LaidPiece piece = bar.pieces().get(i);
            marks.add(Mark.outline(corners(piece)));
            words(piece, String.valueOf(i + 1));
        }
    }

    private void words(LaidPiece piece, String place) {
        double middle = (x(piece.fromMm()) + x(piece.toMm())) / 2;
        double room = x(piece.toMm()) - x(piece.fromMm()) - 2 * slant(piece.left()) - 2 * slant(piece.right());
        String length = Digits.plain(piece.cut().lengthMm());
        for (double size : new double[] {WORDS_MM, SMALL_MM}) {
            if (Mark.Lettering.widthMm(length, size) <= room - 1) {
                marks.add(Mark.centred(new Point(middle, (TOP_MM + BOTTOM_MM) / 2), length, size));
                break;
            }
        }
        if (Mark.Lettering.widthMm(place, SMALL_MM) <= x(piece.toMm()) - x(piece.fromMm())) {
            marks.add(Mark.centred(new Point(middle, BOTTOM_MM + SMALL_MM), place, SMALL_MM));
        }
    }

    /** How far the corners of an end lie apart on paper. */
    private double slant(LaidEnd end) {
        return acrossMm * Math.tan(Math.toRadians(end.degrees().doubleValue())) * mmOnPaper;
    }

    private List<Point> corners(LaidPiece piece) {
        double left = x(piece.fromMm());
        double right = x(piece.toMm());
        double leftBy = slant(piece.left());
        double rightBy = slant(piece.right());
        return List.of(
                new Point(left + (piece.left().lean() > 0 ? leftBy : 0), TOP_MM),
                new Point(right - (piece.right().lean() < 0 ? rightBy : 0), TOP_MM),
                new Point(right - (piece.right().lean() > 0 ? rightBy : 0), BOTTOM_MM),
                new Point(left + (piece.left().lean() < 0 ? leftBy : 0), BOTTOM_MM));
    }

    private void rest() {
        double left = x(bar.lengthMm().subtract(bar.restMm()));
        double right = x(bar.lengthMm());
        if (!bar.isKept()) {
            marks.addAll(Hatching.draw(left, TOP_MM, right, BOTTOM_MM));
        }
        String words = (bar.isKept() ? "Keep " : "Scrap ") + Digits.plain(bar.restMm());
        if (Mark.Lettering.widthMm(words, WORDS_MM) <= right - left - 1 && bar.isKept()) {
            marks.add(Mark.centred(new Point((left + right) / 2, (TOP_MM + BOTTOM_MM) / 2), words, WORDS_MM));
        }
    }
}
