package boltlore.trades.shipping;

import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Outlines;
import boltlore.report.drawing.Point;
import java.util.ArrayList;
import java.util.List;

/** A crate's label in large letters, half a sheet: order, which of how many, masses, who lifts, which way is up. */
final class LabelDrawing {

    private static final double WIDTH_MM = 165;
    private static final double HEIGHT_MM = 118;
    private static final double LEFT_MM = 6;
    private static final double FIRST_ARROW_MM = 137;
    private static final double ARROWS_APART_MM = 15;
    private static final double ARROW_TOP_MM = 5;
    private static final double ARROW_FOOT_MM = 23;

    /** What accents take above capitals and tails below them, as shares of the capitals' height. */
    private static final double ABOVE = 0.27;

    private static final double BELOW = 0.31;
    private static final double AIR_MM = 1.2;

    private final Crate crate;
    private final Shipment shipment;
    private final LoadWords words;
    private final List<Mark> marks = new ArrayList<>();
    private double top = 7;

    private LabelDrawing(Crate crate, Shipment shipment, LoadWords words) {
        this.crate = crate;
        this.shipment = shipment;
        this.words = words;
    }

    static Drawing draw(Crate crate, Shipment shipment, LoadWords words) {
        LabelDrawing label = new LabelDrawing(crate, shipment, words);
        label.frame();
        label.written();
        label.arrow(FIRST_ARROW_MM);
        label.arrow(FIRST_ARROW_MM + ARROWS_APART_MM);
        label.marks.add(
                Mark.centred(new Point(FIRST_ARROW_MM + ARROWS_APART_MM / 2, ARROW_FOOT_MM + 4), label.say("up"), 3));
        return new Drawing(WIDTH_MM, HEIGHT_MM, label.says(), label.marks);
    }

    private String say(String name) {
        return words.phrases().say(name);
    }

    private String says() {
        return "Label of crate " + crate.number() + ", order "
                + shipment.order().name() + ", " + NumberFormats.kg(crate.grossKg()) + " gross.";
    }

    private void frame() {
        marks.add(Mark.outline(Outlines.box(1, 1, WIDTH_MM - 1, HEIGHT_MM - 1)));
    }

    private void written() {
        line(
                shipment.workshop().name() + " – "
                        + shipment.shipping().consignor().phone(),
                3);
        line(shipment.order().name(), 9);
        String all = say("of") + " " + shipment.crates().size();
        line(say("crate") + " " + crate.number() + " " + all, 9);
        line(words.of(crate.load()), 4);
        masses();
        line(handling(), 4);
        dangerous();
    }

    private void masses() {
        line(say("grossWord") + " " + words.kg(crate.grossKg()), 9);
        line(
                say("netWord") + " " + words.kg(crate.netKg()) + " – "
                        + NumberFormats.size(crate.type().outside()) + " mm",
                4);
        line(say("lift." + Lift.of(crate.grossKg(), shipment.shipping().lifting())), 5);
    }

    private String handling() {
        String dry = say("dry");
        String stack = crate.type().stackable() ? "" : " – " + say("noStack");
        return dry + stack + (crate.heart(shipment.shipping().lifting()).isPresent() ? " – " + say("heart") : "");
    }

    private void dangerous() {
        if (crate.load().dangerous()) {
            boolean lithium = shipment.dangerous().stream()
                    .anyMatch(goods -> goods.lithium() && goods.crates().contains(crate));
            line(crate.load().un() + (lithium ? " – " + say("lithium") : ""), 6);
            line(words.phrases().say("damaged", shipment.shipping().consignor().phone()), 4);
        }
    }

    private void line(String text, double height) {
        top += height * ABOVE;
        boolean besideArrows = top < ARROW_FOOT_MM + 8;
        double room = (besideArrows ? FIRST_ARROW_MM - 12 : WIDTH_MM - LEFT_MM) - LEFT_MM;
        double fits = room / Mark.Lettering.widthMm(text, 1);
        marks.add(Mark.from(new Point(LEFT_MM, top + height / 2), text, Math.min(height, fits)));
        top += height * (1 + BELOW) + AIR_MM;
    }

    /** One of the two arrows for 'this way up'; the words stand below them. */
    private void arrow(double x) {
        double head = ARROW_TOP_MM + 10;
        marks.add(Mark.outline(List.of(
                new Point(x, ARROW_TOP_MM),
                new Point(x + 6, head),
                new Point(x + 2, head),
                new Point(x + 2, ARROW_FOOT_MM),
                new Point(x - 2, ARROW_FOOT_MM),
                new Point(x - 2, head),
                new Point(x - 6, head))));
    }
}
