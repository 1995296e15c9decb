package boltlore.trades.testing;

import boltlore.catalogue.Instrument;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.TestGroup;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One line of the test sheet: one thing tested at one place.
 *
 * @param key unique on the sheet
 * @param at null where the kit is tested as a whole
 * @param basis how the limit comes about, in figures; empty where it stands in the catalogue
 * @param unit of result and limit, empty where a state is found
 * @param suitedOhm what the known resistor of an isolation test should about be, in ohm; null with other tests
 * @param packVolts what the pack shows between empty and full, where the result follows from it; null with other tests
 * @param boxes what must be written down
 */
public record TestRow(
        String key,
        TestGroup group,
        KitTest test,
        @Nullable TestedAt at,
        Instrument instrument,
        Limit limit,
        String basis,
        String unit,
        @Nullable BigDecimal suitedOhm,
        Limit.@Nullable Between packVolts,
        List<Box> boxes) {

    public TestRow {
        boxes = List.copyOf(boxes);
    }

    /** Whether the result is worked out from several readings. */
    public boolean workedOut() {
        return boxes.size() > 1;
    }
}
