package boltlore.architecture.samples.locale.bill;

import java.util.Locale;

/** Writes a number in the digits of the machine, and in those of nobody. */
public final class Bill {

    private Bill() {}

    public static String number(int number) {
        return "%d".formatted(number);
    }

    public static String rootNumber(int number) {
        return String.format(Locale.ROOT, "%d", number);
    }
}
