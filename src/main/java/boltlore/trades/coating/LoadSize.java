package boltlore.trades.coating;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Oven;
import boltlore.measure.Digits;
import boltlore.measure.Percent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * What hung pieces take up of an oven, or what it holds.
 *
 * @param kg of pieces with what they hang on
 * @param litres of the pieces' envelopes
 */
public record LoadSize(BigDecimal areaM2, BigDecimal kg, int hooks, BigDecimal litres) {

    /** Hooks, wires and bars weigh about this much for each hang point; common practice, no source. */
    public static final BigDecimal HANGING_KG = new BigDecimal("0.25");

    static final LoadSize NONE = new LoadSize(BigDecimal.ZERO, BigDecimal.ZERO, 0, BigDecimal.ZERO);

    /** Of one piece. A piece without an envelope takes up no volume that is known. */
    public static LoadSize of(BatchRow row) {
        return of(row.coat(), row.massKg());
    }

    /** @param massKg of one piece with all that is in it */
    static LoadSize of(CoatingSpec coat, BigDecimal massKg) {
        int hooks = coat.hangPoints();
        EnvelopeMm envelope = coat.envelope();
        return new LoadSize(
                coat.areaM2(),
                massKg.add(HANGING_KG.multiply(BigDecimal.valueOf(hooks))),
                hooks,
                envelope == null ? BigDecimal.ZERO : envelope.litres());
    }

    /** All that the oven takes at once; of its volume the share that hung parts may fill. */
    public static LoadSize limits(Oven oven) {
        return new LoadSize(
                oven.loadAreaM2(),
                oven.loadKg(),
                oven.hooks(),
                oven.inside().litres().multiply(Percent.fraction(oven.fillPercent())));
    }

    public LoadSize plus(LoadSize other) {
        return new LoadSize(areaM2.add(other.areaM2), kg.add(other.kg), hooks + other.hooks, litres.add(other.litres));
    }

    public LoadSize times(int count) {
        BigDecimal factor = BigDecimal.valueOf(count);
        return new LoadSize(areaM2.multiply(factor), kg.multiply(factor), hooks * count, litres.multiply(factor));
    }

    public boolean within(LoadSize limits) {
        return beyond(limits).isEmpty();
    }

    /** What goes beyond a limit, in words with figures; empty where nothing does. */
    List<String> beyond(LoadSize limits) {
        List<String> beyond = new ArrayList<>();
        beyond(beyond, "area", areaM2, limits.areaM2, "m²");
        beyond(beyond, "mass with hanging", kg, limits.kg, "kg");
        beyond(beyond, "hang points", BigDecimal.valueOf(hooks), BigDecimal.valueOf(limits.hooks), "");
        beyond(beyond, "volume", litres, limits.litres, "l");
        return beyond;
    }

    private static void beyond(List<String> beyond, String what, BigDecimal has, BigDecimal limit, String unit) {
        if (LoadUnits.up(has) > LoadUnits.down(limit)) {
            beyond.add((what + " " + Digits.upTo(has, 2) + " is over the load limit of " + Digits.upTo(limit, 2) + " "
                            + unit)
                    .strip());
        }
    }
}
