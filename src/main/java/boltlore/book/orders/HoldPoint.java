package boltlore.book.orders;

import boltlore.faults.Fault;

/**
 * What holds an order on its way.
 *
 * @param found what is, in a sentence without a full stop
 * @param expected what must be before it goes on
 * @param advice what to do
 * @param mayBeReleased whether a person may pass it and answer for that
 */
public record HoldPoint(String found, String expected, String advice, boolean mayBeReleased) {

    static HoldPoint firm(String found, String expected, String advice) {
        return new HoldPoint(found, expected, advice, false);
    }

    static HoldPoint released(String found, String expected, String advice) {
        return new HoldPoint(found, expected, advice, true);
    }

    Fault fault(String order) {
        String pass = mayBeReleased ? "Whoever answers for it passes it with --yes and --reason." : "";
        return Fault.of("order " + order, found, expected, (advice + " " + pass).strip());
    }
}
