package boltlore.power;

import boltlore.measure.Digits;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The power that passes a chain of links.
 *
 * @param phases in use
 * @param volts across one phase
 * @param amps in each phase
 */
public record Power(int phases, BigDecimal volts, BigDecimal amps) {

    /**
     * Power = the least of the phase counts × the voltage of one phase × the least of the currents.
     *
     * @return empty where no link of the chain says its phases, or none its current
     */
    public static Optional<Power> through(List<Link> chain, Voltage voltage) {
        Optional<Integer> phases =
                chain.stream().map(Link::phases).filter(Objects::nonNull).min(Comparator.naturalOrder());
        Optional<BigDecimal> amps =
                chain.stream().map(Link::amps).filter(Objects::nonNull).min(Comparator.naturalOrder());
        return phases.flatMap(least -> amps.map(most -> new Power(least, voltage.acrossOnePhase(), most)));
    }

    public BigDecimal watts() {
        return volts.multiply(amps).multiply(BigDecimal.valueOf(phases));
    }

    /** What may be drawn for hours on end, where outlets are rated lower for that: a factor such as 0.8. */
    public BigDecimal wattsForHours(BigDecimal factor) {
        return watts().multiply(factor);
    }

    /** To one decimal, half-up. */
    public BigDecimal kilowatts() {
        return watts().movePointLeft(3).setScale(1, RoundingMode.HALF_UP);
    }

    /** '3.7 kW (1 phase × 230 V × 16 A)'. */
    public String says() {
        return says(Wording.ENGLISH);
    }

    /** The same in another language: '3,7 kW (1 Phase × 230 V × 16 A)'. */
    public String says(String language) {
        boolean german = language.equals("de");
        String plural = german ? " Phasen" : " phases";
        String singular = german ? " Phase" : " phase";
        String said = kilowatts() + " kW (" + phases + (phases == 1 ? singular : plural) + " × " + Digits.upTo(volts, 1)
                + " V × " + Digits.upTo(amps, 1) + " A)";
        return language.equals(Wording.ENGLISH) ? said : said.replace('.', ',');
    }
}
