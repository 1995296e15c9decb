package boltlore.trades.weighing;

import boltlore.bill.Item;
import boltlore.bill.Masses;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Station;
import boltlore.catalogue.Weights;
import boltlore.trades.coating.KitFilm;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An item of the bill's first level with all inside it, as it weighs in the vehicle.
 *
 * @param massKg with film and water
 * @param filmKg of it, cured film of powder
 * @param waterKg of it, water that a concentrate is mixed with in the vehicle
 * @param at null where neither its position nor its sub-system has a station
 * @param measured whether the station is the position's own and not its sub-system's
 */
public record Added(
        Item item,
        BigDecimal massKg,
        BigDecimal filmKg,
        BigDecimal waterKg,
        @Nullable Station at,
        boolean measured) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    static Added of(Item item, Weights weights, Map<String, Finish> finishes) {
        BigDecimal filmKg = KitFilm.ofWhole(item, finishes);
        BigDecimal waterKg = item.all().map(each -> waterKg(each, weights)).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal own = item.all().map(Masses::ownKg).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new Added(
                item,
                own.add(filmKg).add(waterKg),
                filmKg,
                waterKg,
                weights.of(item.position()),
                weights.measured(item.position()));
    }

    /**
     * A litre (or kilogram) of concentrate that is p per cent of the mixture comes with (100 − p) / p litres of water, each
     * a kilogram (0.998 kg/l at 20 °C, CRC Handbook, from memory); what volume mixing loses is not counted.
     */
    private static BigDecimal waterKg(Item item, Weights weights) {
        BigDecimal percent = weights.concentrates().get(item.part().number());
        return percent == null
                ? BigDecimal.ZERO
                : item.quantity().multiply(HUNDRED.subtract(percent)).divide(percent, MathContext.DECIMAL128);
    }

    public String subSystem() {
        return item.position().subSystem();
    }

    /** Something that weighs and has no place. */
    boolean unplaced() {
        return at == null && massKg.signum() != 0;
    }

    /** Empty where it has no place. */
    Optional<Balance> balance() {
        return at == null ? Optional.empty() : Optional.of(Balance.of(massKg, at));
    }

    /** What it adds to the axles; nothing where it has no place. */
    public AxleLoads on(int wheelbaseMm) {
        return balance().orElse(Balance.NONE).on(BigDecimal.valueOf(wheelbaseMm));
    }
}
