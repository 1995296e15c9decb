package boltlore.trades.shipping;

import boltlore.catalogue.Shipping;
import java.util.List;

/**
 * How and where crates travel.
 *
 * @param to countries beyond the consignor's, the destination last (ISO 3166 alpha-2); empty where nobody has said
 * @param leavesNow whether they are being shipped, so that somebody has to say where
 */
public record Route(By by, List<String> to, boolean leavesNow) {

    public Route {
        to = List.copyOf(to);
    }

    /** One that they set out on. */
    public Route(By by, List<String> to) {
        this(by, to, true);
    }

    /** To that country where nobody has said another. */
    Route orElseTo(String country) {
        return to.isEmpty() ? new Route(by, List.of(country), leavesNow) : this;
    }

    /** Whether a border is crossed; one that nobody has spoken of is taken to be. */
    public boolean crossesBorder(Shipping shipping) {
        return to.isEmpty()
                || to.stream()
                        .anyMatch(
                                country -> !country.equals(shipping.consignor().country()));
    }

    /** Whether customs papers are asked for: a country outside the union of customs is on the way. */
    public boolean leavesUnion(Shipping shipping) {
        List<String> union = shipping.customsUnion();
        boolean within = union.contains(shipping.consignor().country());
        return crossesBorder(shipping) && !(within && !to.isEmpty() && union.containsAll(to));
    }

    /** Whether lorries do not reach a country on the way, so that the rules of the road are not the ones to go by. */
    public boolean overseas(Shipping shipping) {
        return by == By.ROAD
                && !shipping.byRoad().isEmpty()
                && !shipping.byRoad().containsAll(beyond(shipping));
    }

    private List<String> beyond(Shipping shipping) {
        String home = shipping.consignor().country();
        return to.stream().filter(country -> !country.equals(home)).toList();
    }

    public String destination() {
        return to.isEmpty() ? "" : to.get(to.size() - 1);
    }
}
