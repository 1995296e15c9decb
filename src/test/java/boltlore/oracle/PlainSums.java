package boltlore.oracle;

import boltlore.catalogue.Contained;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.math.MathContext;

/** Cost with scrap and before coating, and mass in kg without the film, of a whole kit; unrounded. */
public record PlainSums(BigDecimal cost, BigDecimal massKg) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    static PlainSums of(PlainKit kit) {
        BigDecimal cost = BigDecimal.ZERO;
        BigDecimal massKg = BigDecimal.ZERO;
        for (PartNumber number : kit.quantities().keySet()) {
            Part part = kit.part(number);
            cost = cost.add(kit.brought(number).multiply(cost(part, kit)));
            if (part.contains().isEmpty() && part.massKg() != null) {
                massKg = massKg.add(kit.quantity(number).multiply(part.massKg()));
            }
        }
        return new PlainSums(cost, massKg);
    }

    /** Of one; what is bought costs what it costs, whatever is inside. */
    private static BigDecimal cost(Part part, PlainKit kit) {
        BigDecimal sum = part.cost();
        if (part.scrapPercent().signum() > 0) {
            BigDecimal good = HUNDRED.subtract(part.scrapPercent());
            sum = sum.multiply(HUNDRED).divide(good, MathContext.DECIMAL128);
        }
        if (part.source() == Source.MAKE) {
            for (Contained child : part.contains()) {
                sum = sum.add(child.quantity().multiply(cost(kit.part(child.part()), kit)));
            }
        }
        return sum;
    }
}
