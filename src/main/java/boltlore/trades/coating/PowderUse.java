package boltlore.trades.coating;

import boltlore.catalogue.Booth;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Powder;
import boltlore.catalogue.Workshop;
import boltlore.measure.Percent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What one run takes of its powder, and whether the overspray is gathered and sprayed again: it is where the powder saved
 * is worth more than the cleaning that gathering brings with it.
 *
 * @param filmKg on the parts at the target film
 * @param wasteKg to issue where overspray goes to waste
 * @param gatheredKg to issue where it is gathered; as much as to waste where it cannot be
 * @param saved value of what gathering saves, in the workshop's currency, unrounded
 * @param cleaning cost of cleaning filters, cyclone and sieve after it, in the workshop's currency, unrounded
 */
public record PowderUse(
        BigDecimal filmKg,
        BigDecimal wasteKg,
        BigDecimal gatheredKg,
        BigDecimal saved,
        BigDecimal cleaning,
        Overspray overspray) {

    /** What becomes of the powder that misses the parts. */
    public enum Overspray {
        /** Gathered: the powder saved is worth more than the cleaning. */
        GATHERED,
        /** To waste: the powder saved is not worth the cleaning. */
        WASTE,
        /** To waste: this powder may never be sprayed again. */
        NEVER,
        /** To waste: the booth gathers none. */
        NO_GATHERING
    }

    public static PowderUse of(PowderRun run, Workshop workshop) {
        CoatingShop shop = workshop.coating();
        BigDecimal film = sum(run, pass -> pass.batch().filmKg(pass.powder()));
        BigDecimal waste = sum(run, pass -> FilmMass.issue(pass.batch().areaM2(), pass.powder()));
        Powder powder = shop.powders().get(run.powder());
        BigDecimal cleaning = new ChangeOverCost(workshop).ofRecovery(run.powder());
        return of(film, waste, powder, reclaimPercent(run.booth(), shop), cleaning);
    }

    private static BigDecimal sum(PowderRun run, Function<Pass, BigDecimal> kg) {
        return run.passes().stream().map(kg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * The decision on figures alone.
     *
     * @param reclaimPercent share of the powder that ends on parts where overspray is sprayed again, or null
     */
    static PowderUse of(
            BigDecimal filmKg,
            BigDecimal wasteKg,
            @Nullable Powder powder,
            @Nullable BigDecimal reclaimPercent,
            BigDecimal cleaning) {
        if (powder == null || reclaimPercent == null) {
            return toWaste(filmKg, wasteKg, cleaning, Overspray.NO_GATHERING);
        }
        if (!powder.neverReclaimed().isEmpty()) {
            return toWaste(filmKg, wasteKg, cleaning, Overspray.NEVER);
        }
        BigDecimal gathered = filmKg.divide(Percent.fraction(reclaimPercent), MathContext.DECIMAL128);
        BigDecimal saved = wasteKg.subtract(gathered).multiply(powder.pricePerKg());
        Overspray overspray = saved.compareTo(cleaning) > 0 ? Overspray.GATHERED : Overspray.WASTE;
        return new PowderUse(filmKg, wasteKg, gathered, saved, cleaning, overspray);
    }

    private static PowderUse toWaste(BigDecimal filmKg, BigDecimal wasteKg, BigDecimal cleaning, Overspray why) {
        return new PowderUse(filmKg, wasteKg, wasteKg, BigDecimal.ZERO, cleaning, why);
    }

    private static @Nullable BigDecimal reclaimPercent(String boothName, CoatingShop shop) {
        return shop.booths().stream()
                .filter(booth -> booth.name().equals(boothName))
                .findFirst()
                .map(Booth::reclaimPercent)
                .orElse(null);
    }

    public boolean gathered() {
        return overspray == Overspray.GATHERED;
    }

    /** Powder to issue for the run in kg. */
    public BigDecimal issueKg() {
        return gathered() ? gatheredKg : wasteKg;
    }

    /** The share of the run's powder that one load of the queue takes, by its film, in kg. */
    public BigDecimal issueKg(OvenLoad load, CureQueue queue) {
        BigDecimal film = load.rows().stream()
                .map(row -> FilmMass.film(row.areaM2(), queue.passOf(row).powder()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return filmKg.signum() == 0 ? BigDecimal.ZERO : issueKg().multiply(film).divide(filmKg, MathContext.DECIMAL128);
    }
}
