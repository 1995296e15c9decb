package boltlore.trades.coating;

import boltlore.catalogue.Oven;
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

    /** Oven minutes of one load, with hanging, heating up and cooling down. */
    public int loadMinutes() {
        return oven.minutesBesideCure() + minutes;
    }

    CureQueue with(List<OvenLoad> others) {
        return new CureQueue(oven, cureMetalC, minutes, passes, List.copyOf(others), leastLoads);
    }
}
