package boltlore.trades.fixings;

import boltlore.measure.Digits;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Phrases;
import boltlore.report.PrintSetup;
import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Outlines;
import boltlore.report.drawing.Point;
import boltlore.trades.KitInWork;
import boltlore.trades.picking.BagPage;
import boltlore.trades.picking.BagRow;
import boltlore.trades.picking.PickingTrade;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A card to be cut out for each bag: its name, its fit stage, a code for scanners, and the torque of each size of bolt in
 * it.
 */
final class BagCards {

    private static final double WIDTH_MM = 82;
    private static final double GAP_MM = 5;
    private static final int ON_ROW = 2;
    private static final double LEFT_MM = 3;
    private static final double CODE_MM = 15;
    private static final double FIRST_MM = 21;
    private static final double LINE_MM = 3.5;
    private static final double LETTERS_MM = 2.3;

    /** Between the margins of a sheet of paper, and what lies white between two rows of cards. */
    private static final double PAGE_MM = 262;

    private static final double BETWEEN_MM = 2.5;

    /** A bag of one fit stage. */
    private record Bag(String stage, String name) {}

    private final KitInWork kit;
    private final Phrases phrases;
    private final BoltWords words;
    private final Map<Bag, Map<String, BigDecimal>> torques = new LinkedHashMap<>();
    private final String language;

    BagCards(KitInWork kit, List<BoltedJoint> joints, Phrases phrases, BoltWords words) {
        this.kit = kit;
        this.phrases = phrases;
        this.words = words;
        this.language = kit.order().language();
        for (BagPage page : PickingTrade.list(kit).bags()) {
            page.rows().stream()
                    .map(BagRow::bag)
                    .filter(bag -> !bag.isEmpty())
                    .distinct()
                    .forEach(bag -> torques.put(new Bag(page.stage(), bag), new LinkedHashMap<>()));
        }
        joints.forEach(joint -> {
            Map<String, BigDecimal> ofBag = torques.get(bag(joint));
            if (ofBag != null) {
                boolean several = joints.stream()
                        .anyMatch(other -> bag(other).equals(bag(joint))
                                && words.size(other).equals(words.size(joint))
                                && !words.torque(other).equals(words.torque(joint)));
                String where = several ? " – " + joint.position().says().in(language) : "";
                ofBag.merge(torque(joint, other(joint, joints)) + where, joint.quantity(), BigDecimal::add);
            }
        });
        // A crate of its own has its crate's label.
        torques.keySet()
                .removeIf(bag -> kit.catalogue().shipping().ownCrate(bag.name()).isPresent());
    }

    private static Bag bag(BoltedJoint joint) {
        return new Bag(joint.position().stage(), joint.position().bag());
    }

    /** Its part number where a bolt of another lies in the same bag and is of the same size; else empty. */
    private String other(BoltedJoint joint, List<BoltedJoint> joints) {
        boolean same = joints.stream()
                .anyMatch(other -> bag(other).equals(bag(joint))
                        && words.size(other).equals(words.size(joint))
                        && !other.bolt().number().equals(joint.bolt().number()));
        return same ? " (" + joint.bolt().number() + ")" : "";
    }

    private String torque(BoltedJoint joint, String number) {
        String stages = joint.stages().isPresent() ? " – " + phrases.say("seeCard") : "";
        return words.size(joint) + number + " – " + words.torque(joint) + stages;
    }

    List<PageBuilder> pages(PrintSetup print) {
        List<Bag> bags = List.copyOf(torques.keySet());
        List<PageBuilder> pages = new ArrayList<>();
        double used = PAGE_MM;
        for (int i = 0; i < bags.size(); i += ON_ROW) {
            List<Bag> row = bags.subList(i, Math.min(i + ON_ROW, bags.size()));
            double high = row.stream().mapToDouble(this::highMm).max().orElse(0) + BETWEEN_MM;
            if (used + high > PAGE_MM) {
                pages.add(Page.named(phrases.say("bagCards") + " " + (pages.size() + 1))
                        .in(language)
                        .print(print));
                used = 0;
            }
            pages.get(pages.size() - 1).picture(row(row, high - BETWEEN_MM));
            used += high;
        }
        return pages;
    }

    private double highMm(Bag bag) {
        return Math.max(CODE_MM + 2 * LEFT_MM, FIRST_MM + LINE_MM * lines(bag).size());
    }

    private Drawing row(List<Bag> bags, double high) {
        List<Mark> marks = new ArrayList<>();
        List<String> says = new ArrayList<>();
        for (int i = 0; i < bags.size(); i++) {
            draw(bags.get(i), i * (WIDTH_MM + GAP_MM), high, marks);
            says.add(called(bags.get(i)));
        }
        return new Drawing(
                ON_ROW * WIDTH_MM + GAP_MM,
                high,
                phrases.say("fits", phrases.say("bagCards"), String.join(", ", says)),
                marks);
    }

    /** How many bolts of which size with which torque, gone on with in another line where one is too long to be read. */
    private List<String> lines(Bag bag) {
        List<String> lines = new ArrayList<>();
        torques.getOrDefault(bag, Map.of()).forEach((torque, count) -> {
            StringBuilder line = new StringBuilder(Digits.plain(count) + " ×");
            for (String word : torque.split(" ", -1)) {
                if (Mark.Lettering.widthMm(line + " " + word, LETTERS_MM) > WIDTH_MM - 2 * LEFT_MM) {
                    lines.add(line.toString());
                    line = new StringBuilder("   ");
                }
                line.append(' ').append(word);
            }
            lines.add(line.toString());
        });
        return lines;
    }

    private String called(Bag bag) {
        return kit.catalogue().shipping().bagSays(bag.name(), kit.workshop(), language);
    }

    private void draw(Bag bag, double left, double high, List<Mark> marks) {
        marks.add(Mark.dashed(Outlines.box(left + 0.5, 0.5, left + WIDTH_MM - 0.5, high - 0.5)));
        double room = WIDTH_MM - CODE_MM - 3 * LEFT_MM;
        put(called(bag), left, 6, 4, room, marks);
        String stage = kit.workshop().stageSays(bag.stage(), language);
        put(phrases.say("order") + " " + kit.order().name() + " · " + stage, left, 12, 2.6, room, marks);
        String code = (kit.order().name() + "/" + bag.name()).toUpperCase(Locale.ROOT);
        double codeLeft = left + WIDTH_MM - CODE_MM - LEFT_MM;
        marks.add(new Mark.Code(new Point(codeLeft, LEFT_MM), code, CODE_MM));
        double at = FIRST_MM;
        for (String line : lines(bag)) {
            put(line, left, at, LETTERS_MM, WIDTH_MM - 2 * LEFT_MM, marks);
            at += LINE_MM;
        }
    }

    private static void put(String text, double left, double at, double height, double room, List<Mark> marks) {
        double fits = room / Mark.Lettering.widthMm(text, 1);
        marks.add(Mark.from(new Point(left + LEFT_MM, at), text, Math.min(height, fits)));
    }
}
