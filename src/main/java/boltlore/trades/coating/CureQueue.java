package boltlore.trades.coating;

import boltlore.catalogue.Oven;
import java.math.RoundingMode;
import java.util.List;

/**
 * What waits for one oven with one powder and one cure window.
 *
 * @param cureMetalC metal temperature in °C
 * @param minutes at that temperature
 * @param loads in the order they are cured
 * @param leastLoads fewer loads than this cannot do
 */
public record CureQueue(
        Oven oven, int cureMetalC, int minutes, List<Pass> passes, List<OvenLoad> loads, int leastLoads) {

    /** The pass that those pieces are in. */
    public Pass passOf(BatchRow row) {
        return passes.stream().filter(pass -> pass.takes(row)).findFirst().orElseThrow();
    }

    /** Oven minutes of that load, with hanging, heating up and cooling down. */
    public int minutesOf(OvenLoad load) {
        return oven.minutesBesideCure() + heatUpMinutes(load) + minutes;
    }

    /**
     * Until the thickest section of the load has metal temperature, in whole minutes, rounded up. In the same air that time
     * grows as the section's thickness does: for a plate heated from both sides it is ρ·c·d/(2·α) times a logarithm of
     * temperatures (lumped capacity, Incropera, Fundamentals of Heat and Mass Transfer, chapter 5; from memory). The minutes
     * of one millimetre are the oven's own, found with a probe.
     */
    public int heatUpMinutes(OvenLoad load) {
        return oven.heatUpMinPerMm()
                .multiply(load.thickest().coat().thickestMm())
                .setScale(0, RoundingMode.CEILING)
                .intValueExact();
    }

    CureQueue with(List<OvenLoad> others) {
        return new CureQueue(oven, cureMetalC, minutes, passes, List.copyOf(others), leastLoads);
    }
}
