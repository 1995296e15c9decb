package boltlore.book.orders;

import boltlore.faults.Fault;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What holds an order on its way.
 *
 * @param of what it is about, by which a page finds the room that mends it
 * @param what is, in a sentence without a full stop
 * @param each the things that it is of, where there are several
 * @param expected what must be before it goes on
 * @param advice what to do
 * @param mayBeReleased whether a person may pass it and answer for that
 */
public record HoldPoint(
        Matter of, String what, List<String> each, String expected, String advice, boolean mayBeReleased) {

    private static final int SHOWN = 5;

    /** What an order can be held by. */
    public enum Matter {
        KIT,
        PICKING,
        PACKING,
        TEST,
        COATING,
        FILM,
        READING,
        NUMBERS,
        CHANGE,
        CHECKS
    }

    public HoldPoint {
        each = List.copyOf(each);
    }

    static HoldPoint firm(Matter of, String what, String expected, String advice) {
        return new HoldPoint(of, what, List.of(), expected, advice, false);
    }

    static HoldPoint released(Matter of, String what, String expected, String advice) {
        return new HoldPoint(of, what, List.of(), expected, advice, true);
    }

    /** The same of several things. */
    HoldPoint ofAll(List<String> things) {
        return new HoldPoint(of, what, things, expected, advice, mayBeReleased);
    }

    /** What is, with the first of the things that it is of. */
    public String found() {
        String shown = each.stream().limit(SHOWN).collect(Collectors.joining(", "));
        return each.isEmpty()
                ? what
                : what + ": " + shown + (each.size() > SHOWN ? " and " + (each.size() - SHOWN) + " more" : "");
    }

    Fault fault(String order) {
        String pass = mayBeReleased ? "Whoever answers for it passes it with --yes and --reason." : "";
        return Fault.of("order " + order, found(), expected, (advice + " " + pass).strip());
    }
}
