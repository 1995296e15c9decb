package boltlore.report.xlsx;

import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * What stands on one sheet of paper: its words with their places, and how far down its ink goes. Measures are points,
 * from the upper left corner of the paper.
 */
final class PaperPage extends PDFGraphicsStreamEngine {

    /**
     * A word in one piece.
     *
     * @param size of its type
     * @param cut whether an edge cuts letters of it off
     */
    record Word(String text, double left, double right, double baseline, double size, boolean cut) {}

    /** Of the type size: a gap that is wider than this parts two words. */
    private static final double GAP = 0.15;

    private static final double CAP_HEIGHT = 0.7;
    private static final double TOLERANCE = 1;

    private final List<Word> words = new ArrayList<>();
    private final StringBuilder letters = new StringBuilder();
    private final double width;
    private final double height;
    private final double foot;
    private double left;
    private double right;
    private double baseline;
    private double size;
    private boolean cut;
    private double lowest;
    private double rightmost;
    private Point2D.Float at = new Point2D.Float();

    /** @param foot height of the margin that holds the count of pages */
    private PaperPage(PDPage page, double foot) throws IOException {
        super(page);
        this.width = page.getMediaBox().getWidth();
        this.height = page.getMediaBox().getHeight();
        this.foot = height - foot;
        processPage(page);
        endWord();
    }

    static PaperPage of(PDPage page, double foot) {
        try {
            return new PaperPage(page, foot);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    List<Word> words() {
        return words.stream().filter(word -> word.baseline() < foot).toList();
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    double lowestInk() {
        return lowest;
    }

    double rightmostInk() {
        return rightmost;
    }

    @Override
    protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement) throws IOException {
        String text = font.toUnicode(code);
        double type = matrix.getScalingFactorY();
        double x = matrix.getTranslateX();
        double y = height - matrix.getTranslateY();
        double end = x + displacement.getX() * matrix.getScalingFactorX();
        boolean blank = text == null || text.isBlank() || text.equals("\u00A0");
        boolean apart = Math.abs(y - baseline) > 0.5 || x > right + GAP * type || x < right - GAP * type;
        if (blank || apart) {
            endWord();
        }
        if (blank) {
            right = end;
            baseline = y;
            return;
        }
        if (letters.isEmpty()) {
            left = x;
        }
        letters.append(text);
        right = end;
        baseline = y;
        size = type;
        ink(end, y);
        Rectangle2D room = shown().getBounds2D();
        cut |= x < room.getMinX() - TOLERANCE
                || end > room.getMaxX() + TOLERANCE
                || matrix.getTranslateY() < room.getMinY() - TOLERANCE
                || matrix.getTranslateY() + CAP_HEIGHT * type > room.getMaxY() + TOLERANCE;
    }

    private void endWord() {
        if (!letters.isEmpty()) {
            words.add(new Word(letters.toString(), left, right, baseline, size, cut));
        }
        letters.setLength(0);
        cut = false;
    }

    private Area shown() {
        return getGraphicsState().getCurrentClippingPath();
    }

    private void ink(double x, double y) {
        if (y < foot) {
            lowest = Math.max(lowest, y);
            rightmost = Math.max(rightmost, x);
        }
    }

    @Override
    public void drawImage(PDImage image) {
        Matrix place = getGraphicsState().getCurrentTransformationMatrix();
        ink(place.getTranslateX() + place.getScalingFactorX(), height - place.getTranslateY());
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        corners.add(p0);
        corners.add(p2);
    }

    private final List<Point2D> corners = new ArrayList<>();

    @Override
    public void moveTo(float x, float y) {
        to(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        to(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        to(x3, y3);
    }

    private void to(float x, float y) {
        at = new Point2D.Float(x, y);
        corners.add(at);
    }

    @Override
    public Point2D getCurrentPoint() {
        return at;
    }

    @Override
    public void closePath() {
        // the corners say all
    }

    @Override
    public void endPath() {
        corners.clear();
    }

    @Override
    public void clip(int windingRule) {
        if (corners.isEmpty()) {
            return;
        }
        Rectangle2D.Double box =
                new Rectangle2D.Double(corners.get(0).getX(), corners.get(0).getY(), 0, 0);
        corners.forEach(box::add);
        getGraphicsState().intersectClippingPath(new java.awt.geom.GeneralPath(box));
    }

    @Override
    public void strokePath() {
        corners.forEach(corner -> ink(corner.getX(), height - corner.getY()));
        corners.clear();
    }

    @Override
    public void fillPath(int windingRule) {
        strokePath();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        strokePath();
    }

    @Override
    public void shadingFill(COSName shadingName) {
        // none is drawn
    }
}
