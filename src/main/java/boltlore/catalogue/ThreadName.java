package boltlore.catalogue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A thread by its designation: ISO metric (ISO 261), unified inch (ASME B1.1), taper pipe (ASME B1.20.1), pipe where the
 * thread does not seal (ISO 228-1) and pipe where it does (ISO 7-1).
 *
 * @param diameterMm largest diameter; of a taper thread that of the pipe or at the gauge plane
 */
public record ThreadName(Form form, BigDecimal diameterMm, BigDecimal pitchMm) {

    /** Which threads go into one another at all. */
    public enum Form {
        METRIC,
        UNIFIED,
        NPT,
        G,
        R,
        RP,
        RC;

        /** Taper R seals in parallel Rp and in taper Rc; all others take their own kind. */
        private boolean takes(Form inner) {
            return this == R ? inner == RP || inner == RC : this != RP && this != RC && this == inner;
        }
    }

    /** What is understood, for those who write a thread. */
    public static final String EXPECTED =
            "a thread such as M14x1.5, 7/16-20 UNF, 3/8-24, 1/4-18 NPT, G 1/4, R 1/4, Rp 1/4 or Rc 1/4";

    private static final MathContext DIGITS = MathContext.DECIMAL64;
    private static final BigDecimal INCH_MM = new BigDecimal("25.4");

    private static final Pattern METRIC = Pattern.compile("M([0-9]+(?:\\.[0-9]+)?)(?:x([0-9]+(?:\\.[0-9]+)?))?");
    private static final Pattern UNIFIED = Pattern.compile("(#?[0-9]+(?:/[0-9]+)?)-([0-9]{1,2})(?: (UNC|UNF))?");
    private static final Pattern NPT = Pattern.compile("([0-9](?:[ -][0-9]/[0-9])?|[0-9]/[0-9]{1,2})-([0-9.]+) NPT");
    private static final Pattern PIPE =
            Pattern.compile("(G|R|Rp|Rc) ?([0-9]/[0-9]{1,2}|[0-9](?: [0-9]/[0-9])?)(?: [AB])?");
    private static final Pattern BSPP =
            Pattern.compile("([0-9]/[0-9]{1,2}|[0-9](?: [0-9]/[0-9])?)(?:-([0-9]{2}))? BSPP");

    /** Coarse pitches in mm (ISO 261). */
    private static final Map<String, String> COARSE = Map.ofEntries(
            Map.entry("3", "0.5"),
            Map.entry("4", "0.7"),
            Map.entry("5", "0.8"),
            Map.entry("6", "1"),
            Map.entry("8", "1.25"),
            Map.entry("10", "1.5"),
            Map.entry("12", "1.75"),
            Map.entry("14", "2"),
            Map.entry("16", "2"),
            Map.entry("18", "2.5"),
            Map.entry("20", "2.5"),
            Map.entry("22", "2.5"),
            Map.entry("24", "3"));

    /** Threads to the inch of the coarse and the fine series, by diameter (ASME B1.1; UNF after boltport.com). */
    private static final Map<String, String> UNIFIED_SERIES = Map.ofEntries(
            Map.entry("#8", "32 36"),
            Map.entry("#10", "24 32"),
            Map.entry("1/4", "20 28"),
            Map.entry("5/16", "18 24"),
            Map.entry("3/8", "16 24"),
            Map.entry("7/16", "14 20"),
            Map.entry("1/2", "13 20"),
            Map.entry("9/16", "12 18"),
            Map.entry("5/8", "11 18"),
            Map.entry("3/4", "10 16"),
            Map.entry("7/8", "9 14"),
            Map.entry("1", "8 12"));

    /** Threads to the inch, and outer diameter of the pipe in inches (ASME B1.20.1, after a public table). */
    private static final Map<String, String> NPT_SIZES = Map.of(
            "1/16", "27 0.3125",
            "1/8", "27 0.405",
            "1/4", "18 0.540",
            "3/8", "18 0.675",
            "1/2", "14 0.840",
            "3/4", "14 1.050",
            "1", "11.5 1.315",
            "1 1/4", "11.5 1.660",
            "1 1/2", "11.5 1.900",
            "2", "11.5 2.375");

    /** Threads to the inch, and largest diameter in mm (ISO 228-1 and ISO 7-1 have the same, after a public table). */
    private static final Map<String, String> PIPE_SIZES = Map.ofEntries(
            Map.entry("1/16", "28 7.723"),
            Map.entry("1/8", "28 9.728"),
            Map.entry("1/4", "19 13.157"),
            Map.entry("3/8", "19 16.662"),
            Map.entry("1/2", "14 20.955"),
            Map.entry("5/8", "14 22.911"),
            Map.entry("3/4", "14 26.441"),
            Map.entry("7/8", "14 30.201"),
            Map.entry("1", "11 33.249"),
            Map.entry("1 1/4", "11 41.910"),
            Map.entry("1 1/2", "11 47.803"),
            Map.entry("2", "11 59.614"));

    /** A numbered size is 0.060 inch and 0.013 inch for each number. */
    private static final BigDecimal FIRST_INCH = new BigDecimal("0.060");

    private static final BigDecimal STEP_INCH = new BigDecimal("0.013");

    /** Empty for what is none of these, for a size that has no coarse pitch here, and where size and threads to the inch do not go together. */
    public static Optional<ThreadName> of(String written) {
        Matcher metric = METRIC.matcher(written);
        if (metric.matches()) {
            return metric(metric.group(1), metric.group(2));
        }
        Matcher unified = UNIFIED.matcher(written);
        if (unified.matches()) {
            return unified(unified.group(1), unified.group(2), unified.group(3));
        }
        Matcher npt = NPT.matcher(written);
        if (npt.matches()) {
            return sized(Form.NPT, NPT_SIZES.get(npt.group(1).replace('-', ' ')), INCH_MM, npt.group(2));
        }
        Matcher bspp = BSPP.matcher(written);
        if (bspp.matches()) {
            return sized(Form.G, PIPE_SIZES.get(bspp.group(1)), BigDecimal.ONE, bspp.group(2));
        }
        Matcher pipe = PIPE.matcher(written);
        return pipe.matches()
                ? sized(
                        Form.valueOf(pipe.group(1).toUpperCase(Locale.ROOT)),
                        PIPE_SIZES.get(pipe.group(2)),
                        BigDecimal.ONE,
                        null)
                : Optional.empty();
    }

    /** 'NPT thread, 13.716 x 1.411 mm': form, diameter and pitch. */
    public String says() {
        String name = form == Form.METRIC ? "metric" : form == Form.UNIFIED ? "unified" : form.name();
        return name + " thread, " + rounded(diameterMm) + " x " + rounded(pitchMm) + " mm";
    }

    private static String rounded(BigDecimal mm) {
        return mm.setScale(3, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }

    /** Whether a bolt, plug or spigot with the one thread goes into a hole or nut with the other. */
    public static boolean mate(String outer, String inner) {
        Optional<ThreadName> male = of(outer);
        Optional<ThreadName> female = of(inner);
        boolean known = male.isPresent() && female.isPresent();
        return known ? male.get().goesInto(female.get()) : outer.equals(inner);
    }

    public boolean goesInto(ThreadName inner) {
        return form.takes(inner.form)
                && diameterMm.compareTo(inner.diameterMm) == 0
                && pitchMm.compareTo(inner.pitchMm) == 0;
    }

    private static Optional<ThreadName> metric(String diameter, @Nullable String pitch) {
        String used = pitch == null ? COARSE.get(diameter) : pitch;
        return used == null
                ? Optional.empty()
                : Optional.of(new ThreadName(Form.METRIC, new BigDecimal(diameter), new BigDecimal(used)));
    }

    private static Optional<ThreadName> unified(String diameter, String toTheInch, @Nullable String series) {
        String known = UNIFIED_SERIES.getOrDefault(diameter, " ");
        String[] coarseAndFine = known.split(" ", -1);
        boolean coarse = coarseAndFine[0].equals(toTheInch) && !"UNF".equals(series);
        boolean fine = coarseAndFine[1].equals(toTheInch) && !"UNC".equals(series);
        return coarse || fine
                ? Optional.of(new ThreadName(
                        Form.UNIFIED, inches(diameter).multiply(INCH_MM), pitch(new BigDecimal(toTheInch))))
                : Optional.empty();
    }

    /** @param toTheInch as written; null where the designation has none */
    private static Optional<ThreadName> sized(
            Form form, @Nullable String size, BigDecimal unitMm, @Nullable String toTheInch) {
        if (size == null) {
            return Optional.empty();
        }
        String[] known = size.split(" ", -1);
        return toTheInch == null || toTheInch.equals(known[0])
                ? Optional.of(new ThreadName(
                        form, new BigDecimal(known[1]).multiply(unitMm), pitch(new BigDecimal(known[0]))))
                : Optional.empty();
    }

    private static BigDecimal pitch(BigDecimal toTheInch) {
        return INCH_MM.divide(toTheInch, DIGITS);
    }

    private static BigDecimal inches(String diameter) {
        if (diameter.startsWith("#")) {
            return FIRST_INCH.add(STEP_INCH.multiply(new BigDecimal(diameter.substring(1))));
        }
        String[] parts = diameter.split("/", -1);
        return parts.length == 1
                ? new BigDecimal(diameter)
                : new BigDecimal(parts[0]).divide(new BigDecimal(parts[1]), DIGITS);
    }
}
