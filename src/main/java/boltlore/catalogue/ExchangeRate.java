package boltlore.catalogue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;

/**
 * What one unit of the workshop's currency is worth in another.
 *
 * @param date from which it counts
 * @param validDays calendar days after its date on which it may still be used
 */
public record ExchangeRate(Currency currency, BigDecimal forOne, LocalDate date, int validDays) {

    public LocalDate lastDay() {
        return date.plusDays(validDays);
    }

    public boolean holdsOn(LocalDate day) {
        return !day.isBefore(date) && !day.isAfter(lastDay());
    }
}
