package boltlore.trades.coating;

import boltlore.catalogue.Booth;
import boltlore.catalogue.Workshop;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Which booth sprays what: a powder that a further booth holds stays there; all others change in the first booth.
 *
 * @param inBooth powder that is in the first booth, or empty
 */
record BoothWays(List<Booth> booths, String inBooth, ChangeOverCost costs) {

    private static final int MONEY_DECIMALS = 4;
    private static final long A_RUN = 1;
    private static final long A_CHANGE = 1_000;
    private static final long MONEY_APART = 1_000_000;

    static BoothWays of(Workshop workshop) {
        List<Booth> booths = workshop.coating().booths();
        String inBooth = booths.isEmpty() ? "" : booths.get(0).holdsPowder();
        return new BoothWays(booths, inBooth, new ChangeOverCost(workshop));
    }

    BoothWays holding(String powder) {
        return new BoothWays(booths, powder, costs);
    }

    boolean elsewhere(String powder) {
        return !powder.equals(inBooth)
                && booths.stream().skip(1).anyMatch(booth -> booth.holdsPowder().equals(powder));
    }

    /** Name of the booth, or empty where there is none at all. */
    String boothOf(String powder) {
        if (elsewhere(powder)) {
            return booths.stream()
                    .filter(booth -> booth.holdsPowder().equals(powder))
                    .findFirst()
                    .orElseThrow()
                    .name();
        }
        return booths.isEmpty() ? "" : booths.get(0).name();
    }

    /** What is in the first booth after that powder. */
    String after(String last, String powder) {
        return elsewhere(powder) ? last : powder;
    }

    /** Cost of a change as a number to compare: money first, then how many changes, then how many runs. */
    long cost(String last, String next) {
        return next.equals(last) || elsewhere(next) ? 0 : A_RUN + ofChange(last, next);
    }

    /** The same for the first spray of all. */
    long first(String next) {
        return next.equals(inBooth) || elsewhere(next) ? A_RUN : A_RUN + ofChange(inBooth, next);
    }

    private long ofChange(String last, String next) {
        BigDecimal money = costs.between(last, next).cost();
        long whole = money.movePointRight(MONEY_DECIMALS)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
        return whole * MONEY_APART + A_CHANGE;
    }
}
