package boltlore.trades.coating;

import boltlore.catalogue.BoothWork;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Powder;
import boltlore.catalogue.Workshop;
import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/** What it costs to change powders: the time of those who clean, and the powder that goes to waste. */
public final class ChangeOverCost {

    private static final BigDecimal MINUTES_IN_AN_HOUR = BigDecimal.valueOf(60);

    private final CoatingShop shop;
    private final BigDecimal labourPerHour;

    public ChangeOverCost(Workshop workshop) {
        this.shop = workshop.coating();
        this.labourPerHour = workshop.labourPerHour();
    }

    /** Lighter to darker needs less cleaning than the other way; what is lost is of the powder that leaves. */
    ChangeOver between(String from, String to) {
        boolean toDarker = darker(shop.powders().get(from), shop.powders().get(to));
        BoothWork work =
                toDarker ? shop.changeOvers().toDarker() : shop.changeOvers().toLighter();
        return new ChangeOver(from, to, toDarker, work, labour(work), lost(work, from.isEmpty() ? to : from));
    }

    /** What cleaning filters, cyclone and sieve costs besides, where the overspray of that powder was gathered. */
    BigDecimal ofRecovery(String powder) {
        BoothWork work = shop.changeOvers().ofRecovery();
        return labour(work).add(lost(work, powder));
    }

    private static boolean darker(@Nullable Powder from, @Nullable Powder to) {
        return from != null
                && to != null
                && from.lightness() != null
                && to.lightness() != null
                && to.lightness().compareTo(from.lightness()) < 0;
    }

    private BigDecimal labour(BoothWork work) {
        return labourPerHour
                .multiply(BigDecimal.valueOf((long) work.minutes() * work.people()))
                .divide(MINUTES_IN_AN_HOUR, MathContext.DECIMAL128);
    }

    private BigDecimal lost(BoothWork work, String powder) {
        Powder known = shop.powders().get(powder);
        return known == null ? BigDecimal.ZERO : work.powderKg().multiply(known.pricePerKg());
    }
}
