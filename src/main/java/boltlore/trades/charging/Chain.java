package boltlore.trades.charging;

import boltlore.power.Link;
import boltlore.power.Power;
import boltlore.power.Voltage;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Links that a charging current passes one after the other, with what they let pass.
 *
 * @param ratedKw rated power of the charger, or null where it says none
 */
public record Chain(
        List<Link> links, BigDecimal volts, @Nullable BigDecimal ratedKw) {

    private static final int KILO = 3;

    /** A rated power is a rounded figure: 11 kW for 11.04. */
    private static final BigDecimal ROUNDED = new BigDecimal("1.01");

    /** Phases × volts × amps of the weakest links, and no more than the charger's rated power; in kW. */
    public Optional<BigDecimal> kilowatts() {
        return power().map(power -> ratedLimits(power) ? ratedOrZero() : kilowatts(power));
    }

    public Optional<Power> power() {
        return Power.through(links, new Voltage.OfOnePhase(volts));
    }

    private static BigDecimal kilowatts(Power power) {
        return power.watts().movePointLeft(KILO);
    }

    private boolean ratedLimits(Power power) {
        return ratedKw != null && ratedKw.multiply(ROUNDED).compareTo(kilowatts(power)) < 0;
    }

    private BigDecimal ratedOrZero() {
        return ratedKw == null ? BigDecimal.ZERO : ratedKw;
    }

    /** Whether the link is one of those that hold the power down. */
    public boolean limits(Link link) {
        return power().map(power -> byPhases(link, power) || byAmps(link, power) || byRating(link, power))
                .orElse(false);
    }

    private boolean byRating(Link link, Power power) {
        return ratedLimits(power) && link.says().equals(Link.CHARGER);
    }

    private boolean byPhases(Link link, Power power) {
        return Integer.valueOf(power.phases()).equals(link.phases())
                && idle(power).findAny().isPresent();
    }

    /** Supply or charger, where it has more phases than are in use; that an inlet has more harms nobody. */
    private Stream<Link> idle(Power power) {
        return links.stream()
                .filter(link -> link.says().equals(Link.SUPPLY) || link.says().equals(Link.CHARGER))
                .filter(link -> link.phases() != null && link.phases() > power.phases());
    }

    private boolean byAmps(Link link, Power power) {
        return !ratedLimits(power) && link.amps() != null && link.amps().compareTo(power.amps()) == 0;
    }

    /** What limits the power, in a sentence or two; empty where nothing is known. */
    public String whatLimits() {
        return power().map(power -> phasesSay(power) + currentSays(power)).orElse("");
    }

    private String phasesSay(Power power) {
        List<Link> fewest = links.stream().filter(link -> byPhases(link, power)).toList();
        return fewest.isEmpty()
                ? ""
                : names(fewest) + (fewest.size() == 1 ? " has " : " have ") + power.phases()
                        + (power.phases() == 1 ? " phase" : " phases") + ", so the other phases of the "
                        + and(idle(power).toList()) + " are idle. ";
    }

    private String currentSays(Power power) {
        if (ratedLimits(power)) {
            return "The charger's rated power is the limit: " + NumberFormats.kilowatts(ratedOrZero()) + ".";
        }
        List<Link> weakest = links.stream().filter(link -> byAmps(link, power)).toList();
        return names(weakest) + (weakest.size() == 1 ? " limits" : " limit") + " the current to "
                + NumberFormats.amps(power.amps()) + (power.phases() == 1 ? "." : " in each phase.");
    }

    /** 'Supply, inlet and charger', to begin a sentence with. */
    private static String names(List<Link> links) {
        String all = and(links);
        return links.size() == 1 ? "The " + all : all.substring(0, 1).toUpperCase(Locale.ROOT) + all.substring(1);
    }

    private static String and(List<Link> links) {
        List<String> names = links.stream().map(Link::says).toList();
        int last = names.size() - 1;
        String before = names.stream().limit(last).collect(Collectors.joining(", "));
        return before.isEmpty() ? names.get(last) : before + " and " + names.get(last);
    }
}
