package boltlore.cli;

import boltlore.order.Order;
import boltlore.trades.costing.quote.Asked;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Currency;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What is wanted of quotations beside what the catalogue says. */
final class QuoteOption {

    @Option(
            names = "--discount",
            paramLabel = "PERCENT",
            converter = DiscountGiven.class,
            description = "Discount in per cent, in place of the partner's.")
    private @Nullable BigDecimal discount;

    @Option(
            names = "--currency",
            paramLabel = "CODE",
            converter = CurrencyGiven.class,
            description = "Currency to quote in, as GBP (ISO 4217), in place of the partner's or the workshop's.")
    private @Nullable Currency currency;

    @Option(
            names = "--on",
            paramLabel = "DATE",
            converter = Day.class,
            description = "The day of the quotation; without it the date of the order, or else today.")
    private @Nullable LocalDate on;

    /** As the order and its partner have agreed, on the date of the order, or else today. */
    static Asked usual(Order order) {
        return new QuoteOption().of(order);
    }

    Asked of(Order order) {
        LocalDate day = on == null ? order.placed() : on;
        return new Asked(day == null ? LocalDate.now(ZoneId.systemDefault()) : day, discount, currency);
    }
}
