package boltlore.trades.testing;

import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Hatching;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Outlines;
import boltlore.report.drawing.Point;
import java.util.ArrayList;
import java.util.List;

/** The measuring circuit of the isolation test as a workshop drawing: pack, voltmeter, known resistor, chassis. */
final class IsolationCircuit {

    private static final double WIDTH_MM = 150;
    private static final double HEIGHT_MM = 52;
    private static final double TOP = 8;
    private static final double CHASSIS = 42;
    private static final double LETTERS_MM = 2.8;
    private static final double PACK_X = 24;
    private static final double METER_X = 74;
    private static final double RESISTOR_X = 114;

    private final TestWords words;
    private final List<Mark> marks = new ArrayList<>();

    private IsolationCircuit(TestWords words) {
        this.words = words;
    }

    static Drawing draw(TestWords words) {
        return new IsolationCircuit(words).drawing();
    }

    private Drawing drawing() {
        pack();
        chassis();
        meter();
        resistor();
        return new Drawing(WIDTH_MM, HEIGHT_MM, words.say("circuit.says"), marks);
    }

    private void line(double fromX, double fromY, double toX, double toY) {
        marks.add(Mark.line(new Point(fromX, fromY), new Point(toX, toY)));
    }

    private void lettering(double x, double y, String text) {
        marks.add(Mark.from(new Point(x, y), text, LETTERS_MM));
    }

    /** Two poles; the upper one is the one that shows the greater voltage against the chassis. */
    private void pack() {
        marks.add(Mark.outline(Outlines.box(PACK_X - 12, TOP + 4, PACK_X + 12, 30)));
        line(PACK_X, TOP + 4, PACK_X, TOP);
        line(PACK_X, TOP, RESISTOR_X, TOP);
        line(PACK_X, 30, PACK_X, 34);
        line(PACK_X, 34, PACK_X + 16, 34);
        marks.add(Mark.centred(new Point(PACK_X, 21), words.say("circuit.pack"), LETTERS_MM));
    }

    private void chassis() {
        marks.addAll(Hatching.draw(6, CHASSIS, WIDTH_MM - 6, CHASSIS + 3));
        marks.add(
                new Mark.Line(List.of(new Point(6, CHASSIS), new Point(WIDTH_MM - 6, CHASSIS)), Mark.THICK_MM, false));
        lettering(6, CHASSIS + 7, words.say("circuit.chassis"));
    }

    private void meter() {
        line(METER_X, TOP, METER_X, 18);
        line(METER_X, 30, METER_X, CHASSIS);
        marks.add(Mark.outline(Outlines.circle(METER_X, 24, 6)));
        marks.add(Mark.centred(new Point(METER_X, 24), "V", 4));
        lettering(METER_X + 8, 24, words.say("circuit.meter"));
    }

    private void resistor() {
        line(RESISTOR_X, TOP, RESISTOR_X, 17);
        marks.add(Mark.outline(Outlines.box(RESISTOR_X - 3, 17, RESISTOR_X + 3, 31)));
        line(RESISTOR_X, 31, RESISTOR_X, CHASSIS);
        lettering(RESISTOR_X + 5, 24, words.say("circuit.resistor"));
    }
}
