package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Offer;
import boltlore.catalogue.PriceBook;
import boltlore.json.CurrencyReading;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads what several suppliers ask for a part. */
final class OfferReading {

    /** Keys of a part that name one supplier, which stand inside offers where there are several. */
    static final List<String> OF_ONE_SUPPLIER = List.of("supplier", "orderCode", "packOf", "minimumOrder", "leadDays");

    /** Decimals of the cost of one after conversion: a hundredth of the smallest coin. */
    private static final int DECIMALS = 4;

    /**
     * The workshop's own currency, and what it is worth in others.
     *
     * @param prices where rates stand, or null where the workshop has none written down
     */
    record Money(Currency home, @Nullable PriceBook prices) {

        /** By the newest rate; empty where there is none. */
        Optional<BigDecimal> atHome(BigDecimal amount, Currency currency) {
            return currency.equals(home)
                    ? Optional.of(amount)
                    : Optional.ofNullable(prices)
                            .flatMap(known -> known.newestRate(currency))
                            .map(rate -> amount.divide(rate.forOne(), DECIMALS, RoundingMode.HALF_UP));
        }
    }

    private record Written(BigDecimal from, BigDecimal cost) {}

    private final Reading reading;
    private final Money money;

    OfferReading(Reading reading, Money money) {
        this.reading = reading;
        this.money = money;
    }

    /** The preferred offer first; empty where the part names one supplier, or none. */
    List<Offer> read(ObjectReader reader) {
        List<Offer> offers = reader.findSomeObjects("offers", this::offer);
        Set<String> codes = new HashSet<>();
        for (Offer offer : offers) {
            if (!codes.add(offer.supplier() + "\n" + offer.orderCode())) {
                reader.faultAt(
                        "offers",
                        "'" + offer.orderCode() + "' of " + offer.supplier() + " a second time",
                        "each offer once",
                        "Put the quantities together under 'breaks'.");
            }
        }
        return offers;
    }

    private Offer offer(ObjectReader reader) {
        String supplier = reading.mentioned(reader, "supplier", Kind.SUPPLIER);
        String orderCode = reader.text("orderCode", TextShape.LINE);
        Currency written = CurrencyReading.find(reader, "currency");
        Currency currency = written == null ? money.home() : written;
        int leadDays = reader.whole("leadDays", 0, 3650);
        BigDecimal packOf = reader.findDecimal("packOf", Range.POSITIVE);
        BigDecimal minimum = reader.findDecimal("minimumOrder", Range.POSITIVE);
        List<Written> breaks = reader.objects("breaks", OfferReading::priceBreak);
        rising(breaks, reader);
        BigDecimal least = Stream.of(BigDecimal.ONE, packOf, minimum)
                .flatMap(Stream::ofNullable)
                .reduce(BigDecimal.ONE, BigDecimal::max);
        first(breaks, least, reader);
        return reading.sources()
                .put(
                        new Offer(supplier, orderCode, currency, leadDays, packOf, minimum, atHome(breaks, currency)),
                        reader.spot("currency"));
    }

    /** Each foreign currency has a rate; told when all files are read, because the rates stand in another one. */
    static void rates(Catalogue catalogue, Reading reading) {
        Money money = new Money(catalogue.workshop().currency(), catalogue.prices());
        catalogue.parts().values().stream()
                .flatMap(part -> part.buying() == null ? Stream.of() : part.buying().offers().stream())
                .filter(offer -> money.atHome(BigDecimal.ONE, offer.currency()).isEmpty())
                .forEach(offer -> reading.faults()
                        .add(reading.sources()
                                .of(offer)
                                .fault(
                                        "'" + offer.currency() + "', of which there is no exchange rate",
                                        "the workshop's currency, or one with a rate in " + CatalogueFolder.PRICING,
                                        "Add one under 'rates'.")));
    }

    /** What is bought in less than the first break has would have no price. */
    private static void first(List<Written> breaks, BigDecimal least, ObjectReader reader) {
        if (!breaks.isEmpty() && breaks.get(0).from().compareTo(least) > 0) {
            reader.faultAt(
                    "breaks",
                    "a first price from " + breaks.get(0).from().toPlainString(),
                    "one from 1, or from the pack or the minimum order",
                    "Begin with the price of the least that is sold.");
        }
    }

    private static Written priceBreak(ObjectReader reader) {
        return new Written(reader.decimal("from", Range.POSITIVE), reader.decimal("cost", Range.NOT_NEGATIVE));
    }

    /** A stand-in where none could be read, so that an offer always has a price. */
    private List<Offer.PriceBreak> atHome(List<Written> breaks, Currency currency) {
        List<Written> some = breaks.isEmpty() ? List.of(new Written(BigDecimal.ONE, BigDecimal.ONE)) : breaks;
        return some.stream()
                .map(each -> new Offer.PriceBreak(
                        each.from(),
                        each.cost(),
                        money.atHome(each.cost(), currency).orElse(each.cost())))
                .toList();
    }

    private static void rising(List<Written> breaks, ObjectReader reader) {
        Written before = null;
        for (Written each : breaks) {
            if (reader.sound() && before != null && each.from().compareTo(before.from()) <= 0) {
                reader.faultAt(
                        "breaks",
                        "from " + each.from().toPlainString() + " after from "
                                + before.from().toPlainString(),
                        "quantities that rise from break to break",
                        "Sort them.");
            }
            before = each;
        }
    }
}
