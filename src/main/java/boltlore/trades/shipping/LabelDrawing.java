package boltlore.trades.shipping;

import boltlore.measure.Party;
import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Outlines;
import boltlore.report.drawing.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A crate's label in large letters, a quarter of a sheet: from whom to whom, order, which of how many, masses, who lifts, and the
 * handling marks by their names in ISO 780:2015 (names from memory).
 */
final class LabelDrawing {

    private static final double WIDTH_MM = 83;
    private static final double HEIGHT_MM = 132;
    /** Between two labels, for the scissors. */
    private static final double GAP_MM = 3;

    static final int SIDE_BY_SIDE = 2;
    private static final double LEFT_MM = 5;
    private static final double FIRST_ARROW_MM = 61;
    private static final double ARROWS_APART_MM = 13;
    private static final double ARROW_TOP_MM = 12;
    private static final double ARROW_FOOT_MM = 24;
    private static final double CODE_MM = 19;
    private static final double CODE_TOP_MM = 31;
    private static final double CODE_FOOT_MM = CODE_TOP_MM + CODE_MM + 5;

    /** What accents take above capitals and tails below them, as shares of the capitals' height. */
    private static final double ABOVE = 0.27;

    private static final double BELOW = 0.31;
    private static final double AIR_MM = 0.9;

    /** Height of the address's letters, and what all its lines together may take up. */
    private static final double ADDRESS_MM = 4.2;

    private static final double ADDRESS_ROOM_MM = 34;

    /** All its lines are lettered alike, down to this height; a longer line alone is smaller. */
    private static final double ADDRESS_LEAST_MM = 3;

    /** A UN number is lettered at least 12 mm high (ADR 5.2.1.1), also on a draft, which is printed a tenth smaller. */
    private static final double UN_MM = 13.1;

    private final Crate crate;
    private final Shipment shipment;
    private final LoadWords words;
    private final List<Mark> marks;
    private final double left;
    private double top = 3;

    private LabelDrawing(Crate crate, Shipment shipment, LoadWords words, double left, List<Mark> marks) {
        this.left = left;
        this.marks = marks;
        this.crate = crate;
        this.shipment = shipment;
        this.words = words;
    }

    /** The labels of crates, side by side. */
    static Drawing draw(List<Crate> crates, Shipment shipment, LoadWords words) {
        List<Mark> marks = new ArrayList<>();
        List<String> says = new ArrayList<>();
        for (int i = 0; i < crates.size(); i++) {
            LabelDrawing label = new LabelDrawing(crates.get(i), shipment, words, i * (WIDTH_MM + GAP_MM), marks);
            label.frame();
            label.addressed();
            label.written();
            label.code();
            says.add(label.says());
        }
        double width = SIDE_BY_SIDE * WIDTH_MM + (SIDE_BY_SIDE - 1) * GAP_MM;
        return new Drawing(width, HEIGHT_MM, String.join(" ", says), marks);
    }

    private Point at(double x, double y) {
        return new Point(left + x, y);
    }

    private String say(String name) {
        return words.phrases().say(name);
    }

    private String says() {
        return "Label of crate " + crate.number() + ", order "
                + shipment.order().name() + ", " + NumberFormats.kg(crate.grossKg()) + " gross.";
    }

    private void frame() {
        marks.add(Mark.outline(Outlines.box(left + 1, 1, left + WIDTH_MM - 1, HEIGHT_MM - 1)));
        arrow(FIRST_ARROW_MM);
        arrow(FIRST_ARROW_MM + ARROWS_APART_MM);
        marks.add(Mark.centred(at(middle(), ARROW_FOOT_MM + 4), say("up"), 3));
    }

    private static double middle() {
        return FIRST_ARROW_MM + ARROWS_APART_MM / 2;
    }

    /** From whom in one small line; to whom as a carrier reads it. */
    private void addressed() {
        Party sender = shipment.parties().seller();
        lines(say("from") + " " + sender.inLine(), 2.4);
        line(shipment.shipping().consignor().phone(), 2.4);
        Party consignee = shipment.parties().consignee().orElse(null);
        if (consignee == null) {
            line(say("to") + " " + shipment.order().customer(), 5);
            line(say("addressMissing"), 4);
            return;
        }
        List<String> lines = Stream.of(
                        Stream.of(consignee.name()),
                        consignee.address().stream(),
                        Stream.of(country(consignee.country())))
                .flatMap(each -> each)
                .toList();
        double height = Math.min(ADDRESS_MM, (ADDRESS_ROOM_MM / lines.size() - AIR_MM) / (1 + ABOVE + BELOW));
        double alike = lines.stream()
                .mapToDouble(text -> (FIRST_ARROW_MM - 8 - LEFT_MM) / Mark.Lettering.widthMm(text, 1))
                .reduce(height, Math::min);
        lines.forEach(text -> line(text, Math.max(alike, ADDRESS_LEAST_MM)));
        Stream.of(consignee.contact(), consignee.phone())
                .filter(text -> !text.isEmpty())
                .reduce((contact, phone) -> contact + ", " + phone)
                .ifPresent(text -> line(text, 3));
    }

    /** 'IRELAND (IE)': in the sender's English as well as in the order's language, where they differ. */
    private String country(String code) {
        Locale country = new Locale("", code);
        String english = country.getDisplayCountry(Locale.ENGLISH);
        String own = country.getDisplayCountry(Locale.forLanguageTag(words.language()));
        return (english.equals(own) ? english : english + " / " + own) + " (" + code + ")";
    }

    private void written() {
        top = Math.max(top + 1.5, CODE_FOOT_MM + 1);
        marks.add(Mark.line(at(LEFT_MM, top), at(WIDTH_MM - LEFT_MM, top)));
        top += 1;
        String all = say("of") + " " + shipment.crates().size();
        line(shipment.order().name() + " – " + say("crate") + " " + crate.number() + " " + all, 4.6);
        line(words.of(crate.load()), 3.2);
        line(say("grossWord") + " " + words.kg(crate.grossKg()), 4.2);
        line(
                say("netWord") + " " + words.kg(crate.netKg()) + " – "
                        + NumberFormats.size(crate.type().outside()) + " mm",
                3);
        line(say("lift." + Lift.of(crate.grossKg(), shipment.shipping().lifting())), 3);
        line(handling(), 3);
        dangerous();
    }

    private String handling() {
        String dry = say("dry");
        String stack = crate.type().stackable() ? "" : " – " + say("noStack");
        return dry + stack + (crate.heart(shipment.shipping().lifting()).isPresent() ? " – " + say("heart") : "");
    }

    private void dangerous() {
        if (crate.load().dangerous()) {
            un(crate.load().un());
            lines(Stream.concat(inside(), Stream.of(call())).collect(Collectors.joining(" – ")), 2.4);
        }
    }

    /** Across the whole label, for it is as wide as it is high. */
    private void un(String text) {
        top += UN_MM * ABOVE;
        marks.add(Mark.centred(at(WIDTH_MM / 2, top + UN_MM / 2), text, UN_MM));
        top += UN_MM * (1 + BELOW) + AIR_MM;
    }

    /** What batteries lie in it, by name. */
    private Stream<String> inside() {
        return shipment.dangerous().stream()
                .filter(goods -> goods.crates().contains(crate))
                .flatMap(goods -> goods.lithium()
                        ? Stream.of("lithium")
                        : goods.entry().filter(UnNumber::leadAcid).stream().map(entry -> "lead"))
                .distinct()
                .map(this::say);
    }

    private String call() {
        return words.phrases()
                .say("damaged", shipment.shipping().consignor().phone().replace(' ', '\u00a0'));
    }

    /** Order, crate and how many there are, for a scanner; the same in letters below it. */
    private void code() {
        String text = (shipment.order().name() + "/" + crate.number() + "/"
                        + shipment.crates().size())
                .toUpperCase(Locale.ROOT);
        marks.add(new Mark.Code(at(middle() - CODE_MM / 2, CODE_TOP_MM), text, CODE_MM));
        marks.add(Mark.centred(at(middle(), CODE_TOP_MM + CODE_MM + 3.5), text, 2.4));
    }

    /** Over as many lines as it takes at that height. */
    private void lines(String text, double height) {
        double room = WIDTH_MM - 2 * LEFT_MM;
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (!line.isEmpty() && Mark.Lettering.widthMm(line + " " + word, height) > room) {
                line(line.toString(), height);
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        line(line.toString(), height);
    }

    private void line(String text, double height) {
        top += height * ABOVE;
        boolean besideCode = top < CODE_FOOT_MM;
        boolean above = top < ARROW_TOP_MM - 4;
        double room = (besideCode && !above ? FIRST_ARROW_MM - 8 : WIDTH_MM - LEFT_MM) - LEFT_MM;
        double fits = room / Mark.Lettering.widthMm(text, 1);
        double lettered = Math.min(height, fits);
        marks.add(Mark.from(at(LEFT_MM, top + lettered / 2), text, lettered));
        top += lettered * (1 + BELOW) + AIR_MM;
    }

    /** One of the two arrows for 'this way up'; the words stand below them. */
    private void arrow(double x) {
        double head = ARROW_TOP_MM + 7;
        marks.add(Mark.outline(List.of(
                at(x, ARROW_TOP_MM),
                at(x + 6, head),
                at(x + 2, head),
                at(x + 2, ARROW_FOOT_MM),
                at(x - 2, ARROW_FOOT_MM),
                at(x - 2, head),
                at(x - 6, head))));
    }
}
