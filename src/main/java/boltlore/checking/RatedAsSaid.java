package boltlore.checking;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Capacitor;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Family;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.Pack;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.catalogue.PublicLead;
import boltlore.catalogue.Supply;
import boltlore.catalogue.ThreadName;
import boltlore.catalogue.Transport;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A rating is that of the name, and of a size that such a thing has: with a decimal point that slipped all else comes out well. */
final class RatedAsSaid {

    /** Rated currents of outlets and breakers in A (IEC 60309-1, IEC 60898-1, NEMA WD 6; from memory). */
    private static final Set<Integer> SUPPLY_AMPS =
            Set.of(6, 8, 10, 13, 15, 16, 20, 24, 25, 30, 32, 40, 48, 50, 60, 63, 80, 100, 125);

    /** Nominal voltages in V to neutral, or of the single-phase supply (IEC 60038, table 1, and ANSI C84.1; from memory). */
    private static final Set<Integer> MAINS_VOLTS = Set.of(100, 110, 115, 120, 127, 200, 208, 220, 230, 240, 277);

    /** Between two of three lines, of what each has to neutral; names round it. */
    private static final double BETWEEN_LINES = Math.sqrt(3);

    private static final double ROUNDED = 0.01;

    /** Lithium modules with their case, in Wh/kg: common practice, no source. */
    private static final BigDecimal LEAST_WH_PER_KG = BigDecimal.valueOf(60);

    private static final BigDecimal MOST_WH_PER_KG = BigDecimal.valueOf(300);

    /** On the link, for each kW of a device at some 400 V, in µF: common practice, no source. */
    private static final BigDecimal LEAST_UF_PER_KW = BigDecimal.valueOf(5);

    private static final BigDecimal MOST_UF_PER_KW = BigDecimal.valueOf(50);

    private static final Pattern AMPS = Pattern.compile("(?<![0-9.,])([0-9]+(?:[.,][0-9]+)?)[ \u00a0]A(?![a-z])");
    private static final Pattern VOLTS = Pattern.compile("(?<![0-9.,])([0-9]+)(?:/([0-9]+))?[ \u00a0]V(?![a-zA-Z])");
    private static final Pattern KILOWATTS = Pattern.compile("(?<![0-9.,])([0-9]+(?:[.,][0-9]+)?)[ \u00a0]kW");
    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1_000);

    private final List<Remark> found = new ArrayList<>();

    private RatedAsSaid() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        RatedAsSaid rated = new RatedAsSaid();
        catalogue.parts().values().forEach(part -> rated.part(catalogue, part));
        catalogue.workshop().supplies().values().forEach(rated::supply);
        catalogue
                .workshop()
                .markets()
                .values()
                .forEach(market -> rated.volts("market " + market.name(), market.facts()));
        catalogue.families().values().forEach(family -> rated.family(catalogue, family));
        return rated.found.stream();
    }

    private void part(Catalogue catalogue, Part part) {
        part.name().byLanguage().forEach((language, name) -> {
            said(Said.part(part), "ratedAmps", part.traits().ratedAmps(), AMPS, BigDecimal.ONE, "A", name);
            said(Said.part(part), "ratedWatts", part.traits().ratedWatts(), KILOWATTS, THOUSAND, "W", name);
        });
        lug(catalogue, part);
        Transport transport = part.transport();
        BigDecimal mass = part.massKg();
        if (transport != null && transport.wattHours() != null && mass != null && mass.signum() > 0) {
            BigDecimal density = transport.wattHours().divide(mass, MathContext.DECIMAL32);
            between(
                    Said.part(part),
                    Digits.plain(transport.wattHours()) + " Wh in " + Said.kg(mass) + ": " + Digits.upTo(density, 1)
                            + " Wh/kg",
                    density,
                    LEAST_WH_PER_KG,
                    MOST_WH_PER_KG,
                    "Wh/kg, as lithium modules have it (common practice)");
        }
    }

    /** A cable with lugs has a port for each stud that they are for, and no other size of lug. */
    private void lug(Catalogue catalogue, Part part) {
        Set<ThreadName> studs = part.contains().stream()
                .map(child -> catalogue.part(child.part()).traits().stud())
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        Set<ThreadName> ports = part.ports().stream()
                .map(Port::bolted)
                .filter(Objects::nonNull)
                .map(Port.Bolted::thread)
                .collect(Collectors.toSet());
        if (!studs.isEmpty() && !studs.equals(ports)) {
            add(
                    Said.part(part),
                    "lugs for " + said(studs) + ", and ports bolted to " + said(ports),
                    "'bolted' with that thread at each port that has such a lug");
        }
    }

    private static String said(Set<ThreadName> threads) {
        return threads.isEmpty()
                ? "none"
                : threads.stream().map(ThreadName::says).sorted().collect(Collectors.joining(", "));
    }

    private void supply(Supply supply) {
        BigDecimal amps = supply.facts().amps();
        String about = "supply " + supply.name();
        volts(about, supply.facts());
        voltsOfName(about, supply);
        said(about, "amps", amps, AMPS, BigDecimal.ONE, "A", supply.says());
        if (amps != null && SUPPLY_AMPS.stream().noneMatch(usual -> amps.compareTo(BigDecimal.valueOf(usual)) == 0)) {
            add(about, "'amps' " + Digits.plain(amps), "a rated current of outlets or breakers, 125 A at most");
        }
    }

    private void volts(String about, Facts facts) {
        BigDecimal volts = facts.volts();
        if (volts != null && !isUsual(volts)) {
            add(about, "'volts' " + Digits.plain(volts), "the voltage of one phase to neutral, as 230 of 230/400 V");
        }
    }

    private static boolean isUsual(BigDecimal volts) {
        return MAINS_VOLTS.stream().anyMatch(usual -> volts.compareTo(BigDecimal.valueOf(usual)) == 0);
    }

    /** 230 is the voltage of a supply called '400 V between lines' and of one called '230/400 V'. */
    private void voltsOfName(String about, Supply supply) {
        BigDecimal volts = supply.facts().volts();
        Matcher named = VOLTS.matcher(supply.says());
        if (volts == null || !isUsual(volts) || !named.find()) {
            return;
        }
        boolean fits = Stream.of(named.group(1), named.group(2))
                .filter(Objects::nonNull)
                .mapToDouble(Double::parseDouble)
                .map(said -> said / volts.doubleValue())
                .anyMatch(ratio -> Math.abs(ratio - 1) <= ROUNDED
                        || (Objects.equals(supply.facts().phases(), 3)
                                && Math.abs(ratio / BETWEEN_LINES - 1) <= ROUNDED));
        if (!fits) {
            add(about, "'volts' " + Digits.plain(volts) + " of '" + supply.says() + "'", "the voltage of its name");
        }
    }

    private void family(Catalogue catalogue, Family family) {
        String of = " " + family.name() + "/";
        for (Fuse fuse : family.electrics().fuses()) {
            Part part = catalogue.part(fuse.part());
            said("fuse" + of + fuse.name(), "amps", fuse.amps(), AMPS, BigDecimal.ONE, "A", fuse.says());
            BigDecimal rated = part.traits().ratedAmps();
            if (rated != null && rated.compareTo(fuse.amps()) != 0) {
                add(
                        "fuse" + of + fuse.name(),
                        "'amps' " + Digits.plain(fuse.amps()),
                        Digits.plain(rated) + " A, the 'ratedAmps' of part " + part.number());
            }
        }
        family.electrics().leads().forEach(lead -> lead("public lead" + of + lead.part(), lead, catalogue));
        for (Capacitor capacitor : family.electrics().capacitors()) {
            family.electrics().branches().stream()
                    .filter(branch -> branch.name().equals(capacitor.branch()))
                    .forEach(branch -> capacitor("capacitor" + of + capacitor.name(), capacitor, family, branch));
        }
    }

    /** Its plug codes what its name says, and no more than its wires bear. */
    private void lead(String about, PublicLead lead, Catalogue catalogue) {
        said(
                about,
                "amps",
                lead.amps(),
                AMPS,
                BigDecimal.ONE,
                "A",
                catalogue.part(lead.part()).name().english());
        if (lead.wireAmps() != null && lead.wireAmps().compareTo(lead.amps()) < 0) {
            add(
                    about,
                    "'wireAmps' " + Digits.plain(lead.wireAmps()) + " and 'amps' " + Digits.plain(lead.amps()),
                    "wires that bear what the plug codes");
        }
    }

    private void capacitor(String about, Capacitor capacitor, Family family, Branch branch) {
        BigDecimal watts = watts(family, branch);
        if (watts.signum() > 0) {
            BigDecimal each = capacitor.microfarad().multiply(THOUSAND).divide(watts, MathContext.DECIMAL32);
            between(
                    about,
                    "'microfarad' " + Digits.plain(capacitor.microfarad()) + " in a device of " + Digits.plain(watts)
                            + " W",
                    each,
                    LEAST_UF_PER_KW,
                    MOST_UF_PER_KW,
                    "µF for each kW (common practice)");
        }
    }

    /** What the device behind a branch takes, or about what its declared current brings at the pack's highest voltage. */
    private static BigDecimal watts(Family family, Branch branch) {
        if (branch.feeds() instanceof Feeds.Device device) {
            return device.watts();
        }
        BigDecimal volts =
                family.electrics().packs().stream().map(Pack::highestVolts).reduce(BigDecimal.ZERO, BigDecimal::max);
        return branch.loadAmps() == null ? BigDecimal.ZERO : branch.loadAmps().multiply(volts);
    }

    private void between(String about, String what, BigDecimal figure, BigDecimal least, BigDecimal most, String unit) {
        if (figure.compareTo(least) < 0 || figure.compareTo(most) > 0) {
            add(about, what, "from " + Digits.plain(least) + " to " + Digits.plain(most) + " " + unit);
        }
    }

    private void said(
            String about,
            String key,
            @Nullable BigDecimal figure,
            Pattern pattern,
            BigDecimal times,
            String unit,
            String name) {
        Matcher matcher = pattern.matcher(name);
        if (figure != null && matcher.find()) {
            BigDecimal said = new BigDecimal(matcher.group(1).replace(',', '.')).multiply(times);
            if (said.compareTo(figure) != 0) {
                add(
                        about,
                        "'" + key + "' " + Digits.plain(figure) + " of '" + name + "'",
                        Digits.plain(said) + " " + unit + ", as the name says");
            }
        }
    }

    private void add(String about, String what, String expected) {
        found.add(new Remark(
                about, Check.RATING, what, expected, "Take it from the maker's data sheet, and mend figure or name"));
    }
}
