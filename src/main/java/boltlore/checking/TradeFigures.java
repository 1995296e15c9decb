package boltlore.checking;

import boltlore.catalogue.BarLength;
import boltlore.catalogue.BarStock;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CrateType;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.Material;
import boltlore.catalogue.Offer;
import boltlore.catalogue.Part;
import boltlore.catalogue.PriceBook;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is paid and packed with: exchange rates, prices of bars, offers for one part, crates. */
final class TradeFigures {

    /** From one entry to the next; currencies of the trade move less within years. Workshop's own value, check before use. */
    private static final BigDecimal RATE_MOVES = new BigDecimal("1.5");

    /** Two bars of one stock cost the same for a metre within this; workshop's own value, check before use. */
    private static final BigDecimal BARS_DIFFER = new BigDecimal("1.6");

    /** Two suppliers of one part at their smallest quantity; workshop's own value, check before use. */
    private static final BigDecimal OFFERS_DIFFER = BigDecimal.valueOf(4);

    /** kg that a litre of crate bears at most, with steel bedded in it; common practice, no source. */
    private static final BigDecimal MOST_KG_FOR_LITRE = new BigDecimal("1.4");

    /** Tare over gross of boxes to crates; common practice, no source. */
    private static final BigDecimal TARE_LEAST = new BigDecimal("0.02");

    private static final BigDecimal TARE_MOST = new BigDecimal("0.35");

    /** Walls, skids and lid on both sides; common practice, no source. */
    private static final int WALLS_MM = 250;

    private TradeFigures() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        PriceBook prices = catalogue.prices();
        return Stream.of(
                        catalogue.shipping().crates().stream().flatMap(TradeFigures::crate),
                        catalogue.materials().values().stream().flatMap(TradeFigures::bars),
                        prices == null ? Stream.<Remark>of() : rates(prices.rates()),
                        catalogue.parts().values().stream().flatMap(part -> offers(part).stream()))
                .flatMap(remarks -> remarks);
    }

    private static Stream<Remark> crate(CrateType crate) {
        BigDecimal gross = crate.mostGrossKg();
        boolean bears = crate.payloadKg().compareTo(crate.inside().litres().multiply(MOST_KG_FOR_LITRE)) <= 0;
        boolean weighs = crate.tareKg().compareTo(gross.multiply(TARE_LEAST)) >= 0
                && crate.tareKg().compareTo(gross.multiply(TARE_MOST)) <= 0
                && crate.packingKg().compareTo(gross.multiply(TARE_MOST)) <= 0;
        Stream<Remark> mass = bears && weighs
                ? Stream.of()
                : Stream.of(crate(
                        crate,
                        "'maxGrossKg' " + Digits.plain(gross) + " with 'tareKg' " + Digits.plain(crate.tareKg())
                                + ", 'packingKg' " + Digits.plain(crate.packingKg()) + " and "
                                + Digits.upTo(crate.inside().litres(), 0) + " l inside",
                        "a tare of 2 to 35 % of the gross mass, no more packing than that, and at most 1.4 kg of contents"
                                + " for a litre"));
        return walls(crate.inside(), crate.outside())
                ? mass
                : Stream.concat(
                        mass,
                        Stream.of(crate(
                                crate,
                                said(crate.inside()) + " mm inside, " + said(crate.outside()) + " mm outside",
                                "each side larger outside, by at most " + WALLS_MM + " mm")));
    }

    private static boolean walls(EnvelopeMm inside, EnvelopeMm outside) {
        return Stream.of(
                        outside.length() - inside.length(),
                        outside.width() - inside.width(),
                        outside.height() - inside.height())
                .allMatch(mm -> mm >= 0 && mm <= WALLS_MM);
    }

    private static String said(EnvelopeMm sides) {
        return sides.length() + " x " + sides.width() + " x " + sides.height();
    }

    private static Remark crate(CrateType crate, String found, String expected) {
        return new Remark(
                "crate " + crate.name(),
                Check.CRATE_FIGURE,
                found,
                expected,
                "Look at the point in each, and at the crate's own mark");
    }

    private static Stream<Remark> bars(Material material) {
        BarStock stock = material.bars();
        if (stock == null) {
            return Stream.empty();
        }
        Comparator<BarLength> byPrice = Comparator.comparing(TradeFigures::perMm);
        Optional<BarLength> cheap = stock.lengths().stream().min(byPrice);
        Optional<BarLength> dear = stock.lengths().stream().max(byPrice);
        return cheap
                .flatMap(least -> dear.filter(most -> apart(perMm(least), perMm(most), BARS_DIFFER))
                        .map(most -> new Remark(
                                "material " + material.name(),
                                Check.BAR_PRICE,
                                least.lengthMm() + " mm for " + Digits.plain(least.cost()) + ", " + most.lengthMm()
                                        + " mm for " + Digits.plain(most.cost()),
                                "bars of one stock within a factor of " + BARS_DIFFER + " for a metre",
                                "Look at the point in 'cost' and 'lengthMm' of its bars")))
                .stream();
    }

    private static BigDecimal perMm(BarLength bar) {
        return bar.cost().divide(BigDecimal.valueOf(bar.lengthMm()), MathContext.DECIMAL64);
    }

    /** Each against the one before of its currency, and the first against what its offers say in both currencies. */
    private static Stream<Remark> rates(List<ExchangeRate> rates) {
        return rates.stream()
                .flatMap(rate -> rates.stream()
                        .filter(earlier -> earlier.currency().equals(rate.currency())
                                && earlier.date().isBefore(rate.date())
                                && apart(earlier.forOne(), rate.forOne(), RATE_MOVES))
                        .max(Comparator.comparing(ExchangeRate::date))
                        .map(earlier -> new Remark(
                                "exchange rate " + rate.currency() + " of " + rate.date(),
                                Check.EXCHANGE_RATE,
                                Digits.plain(rate.forOne()) + " for one of the workshop's currency",
                                "about " + Digits.plain(earlier.forOne()) + ", the rate of " + earlier.date()
                                        + ", within a factor of " + RATE_MOVES,
                                "Look at the point, and whether the rate is the other way round"))
                        .stream());
    }

    private static Optional<Remark> offers(Part part) {
        List<Offer> offers = part.buying() == null ? List.of() : part.buying().offers();
        return offers.stream()
                .skip(1)
                .filter(other -> apart(first(offers.get(0)), first(other), OFFERS_DIFFER))
                .findFirst()
                .map(other -> new Remark(
                        Said.part(part),
                        Check.EXCHANGE_RATE,
                        money(first(offers.get(0))) + " from " + offers.get(0).supplier() + ", " + money(first(other))
                                + " from " + other.supplier() + ", in the workshop's currency",
                        "offers for one part within a factor of " + OFFERS_DIFFER,
                        "Look at the point in 'cost', at the currency, and at its exchange rate in pricing.json"));
    }

    private static BigDecimal first(Offer offer) {
        return offer.breaks().get(0).homeCost();
    }

    private static boolean apart(BigDecimal one, BigDecimal other, BigDecimal factor) {
        return one.min(other).multiply(factor).compareTo(one.max(other)) < 0;
    }

    private static String money(BigDecimal amount) {
        return Digits.plain(amount.setScale(2, RoundingMode.HALF_UP));
    }
}
