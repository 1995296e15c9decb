package boltlore.desk.bench;

import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.db.Reading;
import boltlore.book.orders.HoldPoint;
import boltlore.book.orders.HoldPoint.Matter;
import boltlore.book.orders.HoldPoints;
import boltlore.desk.frame.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Something that keeps an order here.
 *
 * @param found what is, in a sentence
 * @param expected what must be, in a sentence
 * @param each the things that it is of, parts with their names; none where it is of one
 * @param mayPass whether a person may answer for it
 * @param path of the page on which it is done
 * @param does what is done there
 */
public record Hold(String found, String expected, List<String> each, boolean mayPass, String path, String does) {

    private static final Pattern PART = Pattern.compile("(?:\\S+ of \\S+ )?([A-Z0-9][A-Z0-9./-]*)(?=[ :,]|$)");

    /** All that would hold it now, if somebody said that it ships; nothing of one that is not owed. */
    static List<Hold> of(Workshop workshop, Reading reading, OrderStanding order) {
        List<Hold> holds = new ArrayList<>();
        if (!order.state().owed()) {
            return holds;
        }
        List<HoldPoint> points = HoldPoints.before(reading, order, OrderState.SHIPPED);
        if (order.state() == OrderState.ORDERED) {
            holds.add(firm("Nobody works on it yet.", "Work has begun.", "/bench", "Begin it on the bench's list"));
        }
        points.forEach(point -> holds.add(of(workshop, order.name(), point)));
        if (order.state() == OrderState.IN_WORK) {
            holds.add(firm(
                    "Nobody has said yet that it is tested.",
                    "Somebody who may has said so under its test report.",
                    "/bench/test/" + order.name() + "/report",
                    "Test report of " + order.name()));
        }
        return holds;
    }

    private static Hold firm(String found, String expected, String path, String does) {
        return new Hold(found, expected, List.of(), false, path, does);
    }

    private static Hold of(Workshop workshop, String order, HoldPoint point) {
        Where where = where(order, point.of());
        return new Hold(
                sentence(point.what()),
                sentence(point.expected()),
                // What a person checks stands in full on the same page.
                point.of() == Matter.CHECKS
                        ? List.of()
                        : point.each().stream()
                                .map(each -> named(workshop, each))
                                .toList(),
                point.mayBeReleased(),
                where.path(),
                where.does());
    }

    /** Where something is done, and what the link there says. */
    private record Where(String path, String does) {}

    private static Where where(String order, Matter of) {
        return switch (of) {
            case PICKING -> new Where("/stores/pick?order=" + order, "Pick " + order);
            case NUMBERS ->
                new Where("/stores/pick?order=" + order + "&all=yes", "Pick " + order + ", number by number");
            case PACKING -> new Where("/bench/pack/" + order, "Count and pack " + order);
            case TEST -> new Where("/bench/test/" + order, "Test " + order);
            case COATING ->
                new Where("/fabrication/coat?order=" + order, "Pieces of " + order + " in the coating shop");
            case FILM -> new Where("/fabrication/film?order=" + order, "Film readings of " + order);
            case CHANGE -> new Where("/sales/order/" + order + "/changes", "Changes of " + order);
            case READING -> new Where("/office/journal?order=" + order, "Journal of " + order);
            case KIT -> new Where("/sales/order/" + order, "Order " + order);
            case CHECKS -> new Where("#checks", "Each of them in full");
        };
    }

    /** With the part's name after its number. */
    private static String named(Workshop workshop, String each) {
        Matcher part = PART.matcher(each);
        String name = part.lookingAt() ? workshop.bench().named(part.group(1)) : "";
        return name.isEmpty() ? each : each.substring(0, part.end(1)) + " " + name + each.substring(part.end(1));
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + (words.endsWith(".") ? "" : ".");
    }
}
