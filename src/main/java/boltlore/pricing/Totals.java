package boltlore.pricing;

import java.math.BigDecimal;
import java.util.Collection;

/**
 * Sums over rows of the costed bill.
 *
 * @param made cost of what is made, without coating
 * @param bought cost of what is bought, without coating
 * @param massKg without the film of powder
 */
public record Totals(BigDecimal made, BigDecimal bought, BigDecimal coating, BigDecimal massKg) {

    public static final Totals NONE = new Totals(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);

    static Totals of(Collection<PricedItem> rows) {
        return rows.stream().reduce(NONE, Totals::plus, Totals::plus);
    }

    /** Without coating. */
    public BigDecimal own() {
        return made.add(bought);
    }

    public BigDecimal cost() {
        return own().add(coating);
    }

    private Totals plus(PricedItem row) {
        BigDecimal nothing = BigDecimal.ZERO;
        return plus(new Totals(
                row.made() ? row.extended() : nothing,
                row.made() ? nothing : row.extended(),
                row.coating(),
                row.massKg()));
    }

    private Totals plus(Totals other) {
        return new Totals(
                made.add(other.made), bought.add(other.bought), coating.add(other.coating), massKg.add(other.massKg));
    }
}
