package boltlore.trades.costing.quote;

import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.PriceBook;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** Finds the exchange rate of a day. */
final class Conversion {

    /** Where rates are written, as faults name it. */
    private static final String FILE = "workshop/pricing.json";

    private Conversion() {}

    /** The newest rate that has begun by that day; empty for the home currency; a fault where it has run out. */
    static Outcome<Optional<ExchangeRate>> rate(PriceBook prices, Currency home, Currency wanted, LocalDate on) {
        if (wanted.equals(home)) {
            return Outcome.sound(Optional.empty());
        }
        List<ExchangeRate> all = prices.rates().stream()
                .filter(rate -> rate.currency().equals(wanted))
                .toList();
        Optional<ExchangeRate> newest =
                all.stream().filter(rate -> !rate.date().isAfter(on)).max(Comparator.comparing(ExchangeRate::date));
        return newest.isPresent() && newest.get().holdsOn(on)
                ? Outcome.sound(newest)
                : Outcome.faulty(fault(wanted, on, all, newest));
    }

    private static LocalDate first(List<ExchangeRate> some) {
        return some.stream()
                .map(ExchangeRate::date)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static Fault fault(Currency wanted, LocalDate on, List<ExchangeRate> all, Optional<ExchangeRate> newest) {
        String found = newest.map(rate ->
                        "an exchange rate of " + wanted + " from " + rate.date() + " that ran out on " + rate.lastDay())
                .orElseGet(() -> all.isEmpty()
                        ? "no exchange rate of " + wanted
                        : "no exchange rate of " + wanted + " before " + first(all));
        return Fault.of(
                FILE,
                found,
                "a rate of " + wanted + " that holds on " + on + ", the day of the quotation",
                "Add today's rate under 'rates', or quote in another currency.");
    }
}
