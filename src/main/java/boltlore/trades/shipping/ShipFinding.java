package boltlore.trades.shipping;

/**
 * Something that a person must look at before crates leave.
 *
 * @param about in a word or two: 'Lithium'
 * @param stops whether nothing may leave as it is
 */
public record ShipFinding(String about, String says, boolean stops) {

    static ShipFinding stops(String about, String says) {
        return new ShipFinding(about, says, true);
    }

    static ShipFinding look(String about, String says) {
        return new ShipFinding(about, says, false);
    }
}
