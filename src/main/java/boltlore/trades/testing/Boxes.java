package boltlore.trades.testing;

import boltlore.catalogue.Demand;
import boltlore.catalogue.Instrument;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.LimitRule;
import boltlore.catalogue.Scale;
import boltlore.trades.testing.Box.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What must be written down for a test: its result, or the readings that the result is worked out from. */
final class Boxes {

    private static final BigDecimal TENTH = new BigDecimal("0.1");
    private static final Scale RESISTOR = new Scale("kohm", TENTH, BigDecimal.valueOf(100_000), TENTH);
    private static final Scale METER = new Scale("Mohm", TENTH, BigDecimal.valueOf(100_000), TENTH);

    private Boxes() {}

    static List<Box> lay(String key, KitTest test, Instrument instrument) {
        LimitRule rule = test.demand() instanceof Demand.Computed reckoned ? reckoned.rule() : null;
        if (rule == LimitRule.ISOLATION) {
            return isolation(key, instrument.scale());
        }
        return rule == LimitRule.PRECHARGE_VOLTS
                ? volts(key, instrument.scale(), Quantity.PACK_VOLTS, Quantity.LINK_VOLTS)
                        .toList()
                : List.of(new Box(key, Quantity.RESULT, instrument.scale()));
    }

    private static List<Box> isolation(String key, @Nullable Scale volts) {
        return Stream.concat(
                        volts(
                                key,
                                volts,
                                Quantity.PACK_VOLTS,
                                Quantity.CHASSIS_VOLTS,
                                Quantity.OTHER_POLE_VOLTS,
                                Quantity.WITH_RESISTOR_VOLTS),
                        Stream.of(box(key, Quantity.RESISTOR, RESISTOR), box(key, Quantity.METER, METER)))
                .toList();
    }

    private static Stream<Box> volts(String key, @Nullable Scale scale, Quantity... quantities) {
        return Stream.of(quantities).map(quantity -> box(key, quantity, scale));
    }

    private static Box box(String key, Quantity quantity, @Nullable Scale scale) {
        return new Box(key + "." + quantity.key(), quantity, scale);
    }
}
