package boltlore.report.drawing;

import java.util.Arrays;
import java.util.List;

/** White paper as dots of grey, on which lines are drawn with soft edges. */
final class Raster {

    private static final double DASH_MM = 2;
    private static final double DASH_AND_GAP_MM = 3;

    private final int width;
    private final int height;
    private final double dotsPerMm;
    private final byte[] dots;

    Raster(double widthMm, double heightMm, double dotsPerMm) {
        this.width = (int) Math.ceil(widthMm * dotsPerMm);
        this.height = (int) Math.ceil(heightMm * dotsPerMm);
        this.dotsPerMm = dotsPerMm;
        this.dots = new byte[width * height];
        byte[] white = new byte[width];
        Arrays.fill(white, (byte) 255);
        for (int row = 0; row < height; row++) {
            System.arraycopy(white, 0, dots, row * width, width);
        }
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** Copies a row of dots, 0 black to 255 white. */
    void row(int row, byte[] into, int at) {
        System.arraycopy(dots, row * width, into, at, width);
    }

    void draw(Mark.Line line) {
        List<Point> points = line.points();
        for (int i = 1; i < points.size(); i++) {
            if (line.dashed()) {
                dashes(points.get(i - 1), points.get(i), line.penMm());
            } else {
                segment(points.get(i - 1), points.get(i), line.penMm());
            }
        }
    }

    private void dashes(Point from, Point to, double penMm) {
        double length = Math.hypot(to.xMm() - from.xMm(), to.yMm() - from.yMm());
        for (double at = 0; at < length; at += DASH_AND_GAP_MM) {
            segment(between(from, to, at / length), between(from, to, Math.min(1, (at + DASH_MM) / length)), penMm);
        }
    }

    private static Point between(Point from, Point to, double share) {
        return new Point(from.xMm() + share * (to.xMm() - from.xMm()), from.yMm() + share * (to.yMm() - from.yMm()));
    }

    private void segment(Point from, Point to, double penMm) {
        Segment segment =
                new Segment(from.xMm() * dotsPerMm, from.yMm() * dotsPerMm, to.xMm() * dotsPerMm, to.yMm() * dotsPerMm);
        double reach = Math.max(0.5, penMm * dotsPerMm / 2);
        int bottom = (int) Math.min(height - 1, Math.ceil(Math.max(segment.y1, segment.y2) + reach));
        int right = (int) Math.min(width - 1, Math.ceil(Math.max(segment.x1, segment.x2) + reach));
        for (int y = (int) Math.max(0, Math.min(segment.y1, segment.y2) - reach - 1); y <= bottom; y++) {
            for (int x = (int) Math.max(0, Math.min(segment.x1, segment.x2) - reach - 1); x <= right; x++) {
                ink(y * width + x, reach + 0.5 - segment.distance(x + 0.5, y + 0.5));
            }
        }
    }

    private void ink(int dot, double cover) {
        if (cover <= 0) {
            return;
        }
        int grey = cover >= 1 ? 0 : 255 - (int) Math.round(255 * cover);
        if (grey < (dots[dot] & 255)) {
            dots[dot] = (byte) grey;
        }
    }

    private record Segment(double x1, double y1, double x2, double y2) {

        double distance(double x, double y) {
            double dx = x2 - x1;
            double dy = y2 - y1;
            double length = dx * dx + dy * dy;
            double along = (x - x1) * dx + (y - y1) * dy;
            double share = along <= 0 ? 0 : along >= length ? 1 : along / length;
            double right = x - x1 - share * dx;
            double down = y - y1 - share * dy;
            return Math.sqrt(right * right + down * down);
        }
    }
}
