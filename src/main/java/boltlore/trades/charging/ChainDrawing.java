package boltlore.trades.charging;

import boltlore.catalogue.Pack;
import boltlore.power.Link;
import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Hatching;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Outlines;
import boltlore.report.drawing.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The chain from supply to pack at the first supply with its largest cable; what limits the power is hatched. */
final class ChainDrawing {

    private static final double WIDTH_MM = Drawing.PORTRAIT_MM;
    private static final double HEIGHT_MM = 32;
    private static final double BOX_MM = 27;
    private static final double GAP_MM = 7.5;
    private static final double TOP_MM = 3;
    private static final double BAND_MM = 15;
    private static final double FOOT_MM = 20;
    private static final double WORDS_MM = 2.4;

    private final List<Mark> marks = new ArrayList<>();
    private double x = 2;

    private ChainDrawing() {}

    static Optional<Drawing> draw(Charging charging) {
        Pack pack = charging.fitted().pack();
        return pack == null || charging.mains() == null
                ? Optional.empty()
                : charging.ac().stream()
                        .filter(way -> way.mains().equals(charging.mains()))
                        .reduce((smaller, larger) -> larger)
                        .map(way -> new ChainDrawing().drawn(way, pack));
    }

    private Drawing drawn(AcCharging way, Pack pack) {
        for (Link link : way.chain().links()) {
            box(link.says(), figures(link), way.chain().limits(link));
            x += GAP_MM;
        }
        box("pack", NumberFormats.volts(pack.nominalVolts()), false);
        String sum =
                NumberFormats.kilowatts(way.kilowatts()) + ", " + NumberFormats.hours(way.hours()) + " from 20 to 80 %";
        marks.add(Mark.from(new Point(2, 27), sum + ". Hatched: what limits it", WORDS_MM));
        return new Drawing(WIDTH_MM, HEIGHT_MM, says(way, sum), marks);
    }

    private static String says(AcCharging way, String sum) {
        return "The chain of supply, cable, inlet, charger and pack: " + sum + ". "
                + way.chain().whatLimits();
    }

    private static String figures(Link link) {
        String phases = link.phases() == null ? "" : link.phases() + " × ";
        return link.amps() == null ? "post's own" : phases + NumberFormats.amps(link.amps());
    }

    private void box(String name, String figures, boolean limits) {
        double right = x + BOX_MM;
        double middle = x + BOX_MM / 2;
        frame(right);
        marks.add(Mark.centred(new Point(middle, TOP_MM + 3.5), name, WORDS_MM));
        marks.add(Mark.centred(new Point(middle, TOP_MM + 8.5), figures, WORDS_MM));
        if (limits) {
            hatch(right);
        }
        x = right;
    }

    private void frame(double right) {
        marks.add(Mark.outline(Outlines.box(x, TOP_MM, right, FOOT_MM)));
        if (x > GAP_MM) {
            marks.add(Mark.line(new Point(x - GAP_MM, TOP_MM + 6), new Point(x, TOP_MM + 6)));
        }
    }

    private void hatch(double right) {
        marks.add(Mark.line(new Point(x, BAND_MM), new Point(right, BAND_MM)));
        marks.addAll(Hatching.draw(x, BAND_MM, right, FOOT_MM));
    }
}
