package boltlore.trades.shipping;

import boltlore.catalogue.CrateType;
import boltlore.catalogue.Lifting;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A packed crate.
 *
 * @param number from 1 within the order
 * @param litres that its content takes up
 * @param guessedLitres of them, given to parts without a size by their mass
 */
public record Crate(
        int number, Load load, CrateType type, List<Packed> packed, BigDecimal litres, BigDecimal guessedLitres) {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    /** Of all that is known to weigh something. */
    public BigDecimal netKg() {
        return packed.stream().map(Packed::kg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Net mass, the empty crate and its packing. */
    public BigDecimal grossKg() {
        return netKg().add(type.tareKg()).add(type.packingKg());
    }

    /** Goods of which nobody knows the mass: the crate weighs more than it says. */
    public List<Packed> unweighed() {
        return packed.stream().filter(each -> each.goods().eachKg() == null).toList();
    }

    /** Fit stages that it serves, as they come. */
    public List<String> stages() {
        return packed.stream().map(each -> each.goods().stage()).distinct().toList();
    }

    /**
     * The one piece that no single person lifts and that weighs more than half of all that is in it: such a crate tips and
     * swings by where that piece lies. Common practice, no source.
     */
    public Optional<Goods> heart(Lifting lifting) {
        return packed.stream()
                .map(Packed::goods)
                .filter(goods -> goods.eachKg() != null && !goods.measured())
                .max(Comparator.comparing(goods -> goods.kg(BigDecimal.ONE)))
                .filter(goods -> Lift.of(goods.kg(BigDecimal.ONE), lifting) != Lift.ONE_PERSON)
                .filter(goods -> goods.kg(TWO).compareTo(netKg()) > 0);
    }
}
