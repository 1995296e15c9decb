package boltlore.catalogue;

import java.math.BigDecimal;

/**
 * Customs duty on goods of a tariff heading.
 *
 * @param hs first digits of the Harmonised System code, with or without points
 * @param origin country (ISO 3166 alpha-2), or empty for every origin
 * @param source where the rate was looked up
 */
public record Duty(String hs, String origin, BigDecimal percent, String source) {

    /** The heading without its points. */
    public String digits() {
        return digits(hs);
    }

    boolean covers(Customs customs) {
        return digits(customs.hs()).startsWith(digits()) && (origin.isEmpty() || origin.equals(customs.origin()));
    }

    /** More digits are closer; of equal ones the one that names the origin. */
    int closeness() {
        return 2 * digits().length() + (origin.isEmpty() ? 0 : 1);
    }

    private static String digits(String code) {
        return code.replace(".", "");
    }
}
