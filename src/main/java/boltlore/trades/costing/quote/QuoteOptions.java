package boltlore.trades.costing.quote;

import boltlore.faults.Outcome;
import boltlore.json.CurrencyReading;
import boltlore.json.Values;
import boltlore.order.json.OrderReader;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Currency;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Options of trades that price orders: what is wanted of quotations beside what the catalogue says. */
public final class QuoteOptions {

    private static final Pattern PERCENT = Pattern.compile("[0-9]{1,3}(\\.[0-9]{1,4})?");
    private static final Pattern WHOLE = Pattern.compile("[1-9][0-9]{0,2}");
    private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

    private static final TradeOption<BigDecimal> DISCOUNT = TradeOption.of(
            "--discount", "PERCENT", "Discount in per cent, in place of the partner's.", QuoteOptions::discount);
    private static final TradeOption<Currency> CURRENCY = TradeOption.of(
            "--currency",
            "CODE",
            "Currency to quote in, as GBP (ISO 4217), in place of the partner's or the workshop's.",
            QuoteOptions::currency);
    private static final TradeOption<LocalDate> ON = TradeOption.of(
            "--on",
            "DATE",
            "The day of the quotation; without it the date of the order, or else today.",
            QuoteOptions::day);

    private static final TradeOption<Integer> VERSION = TradeOption.of(
            "--quoted-as",
            "NUMBER",
            "Which version of the order's quotation it is, printed in its number; without it 1.",
            QuoteOptions::version);

    public static final List<TradeOption<?>> ALL = List.of(DISCOUNT, CURRENCY, ON, VERSION);

    private QuoteOptions() {}

    /** The order's price as these options ask for it. */
    public static OrderPricing pricing(KitInWork kit, Given options) {
        return ALL.stream().anyMatch(options::has)
                ? price(kit, options)
                : kit.once(OrderPricing.class, own -> price(own, Given.NONE));
    }

    private static OrderPricing price(KitInWork kit, Given options) {
        return OrderPricing.of(kit.bill(), kit.catalogue(), asked(kit, options));
    }

    /** What these options ask for of the order's quotation. */
    public static QuoteRequest asked(KitInWork kit, Given options) {
        return new QuoteRequest(
                options.get(ON).orElse(kit.day()),
                options.get(DISCOUNT).orElse(null),
                options.get(CURRENCY).orElse(null),
                options.get(VERSION).orElse(kit.version()));
    }

    private static Outcome<Integer> version(String written) {
        return WHOLE.matcher(written).matches()
                ? Outcome.sound(Integer.valueOf(written))
                : VERSION.refused("'" + written + "'", "a whole number from 1 to 999");
    }

    private static Outcome<BigDecimal> discount(String written) {
        BigDecimal percent = PERCENT.matcher(written).matches() ? new BigDecimal(written) : null;
        return percent == null || percent.compareTo(OrderReader.MOST_DISCOUNT) > 0
                ? DISCOUNT.refused(
                        "'" + written + "'",
                        "per cent from 0 to " + OrderReader.MOST_DISCOUNT.toPlainString() + ", written as 2.5")
                : Outcome.sound(percent);
    }

    private static Outcome<Currency> currency(String code) {
        return CurrencyReading.known(code)
                .map(Outcome::sound)
                .orElseGet(() -> CURRENCY.refused("'" + code + "'", CurrencyReading.EXPECTED));
    }

    private static Outcome<LocalDate> day(String written) {
        LocalDate day = DAY.matcher(written).matches() ? parsed(written) : null;
        return day == null || !Values.isSensible(day)
                ? ON.refused(
                        "'" + written + "'",
                        "a date such as 2026-06-01, from " + Values.FIRST_YEAR + " to " + Values.LAST_YEAR)
                : Outcome.sound(day);
    }

    private static @Nullable LocalDate parsed(String written) {
        try {
            return LocalDate.parse(written);
        } catch (DateTimeParseException none) {
            return null;
        }
    }
}
