package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Customs;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Prices by the kilogram and lead times far from those of the same kind of goods: parts with the same code of the Harmonised
 * System (its heading, where too few share the code), unit and source. What is far is measured in factors from the median of the
 * others, so that one slip moves no bound; where a kind spreads widely, the median deviation widens the bound.
 */
final class SiblingFigures {

    /** So many others say what is usual. */
    private static final int OTHERS = 3;

    /** Digits of a heading of the Harmonised System. */
    private static final int HEADING = 4;

    /**
     * The demo's parts keep within a factor of 5.1 of their kind's median, and goods of one code that are bought in dozens
     * within 5; a slip of the point is 10. Workshop's own value, check before use.
     */
    private static final double PRICE_FACTOR = 6;

    /** Deviations that a normal spread leaves out once in 400: three, of 1.4826 median deviations each. */
    private static final double SPREADS = 3 * 1.4826;

    /** Lead times of one kind lie closer, and one day is the least; workshop's own values, check before use. */
    private static final double LONGER = 4;

    private static final double SHORTER = 6;

    private final List<Part> parts;

    private SiblingFigures(Catalogue catalogue) {
        this.parts = catalogue.parts().values().stream()
                .filter(part -> part.customs() != null && !part.reused())
                .toList();
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        SiblingFigures check = new SiblingFigures(catalogue);
        return Stream.concat(check.prices(), check.leadDays());
    }

    private Stream<Remark> prices() {
        List<Part> priced = parts.stream()
                .filter(part -> part.source() == Source.BUY && part.cost().signum() > 0)
                .filter(part -> part.massKg() != null && part.massKg().signum() > 0)
                .toList();
        ToDoubleFunction<Part> of = part -> StrictMath.log(perKg(part).doubleValue());
        return kinds(priced, of).flatMap(kind -> {
            double wide = Math.max(StrictMath.log(PRICE_FACTOR), SPREADS * kind.deviation());
            double off = of.applyAsDouble(kind.of()) - kind.median();
            return Math.abs(off) <= wide ? Stream.<Remark>empty() : Stream.of(price(kind, wide));
        });
    }

    private static Remark price(Kind kind, double wide) {
        return new Remark(
                Said.part(kind.of()),
                Check.PRICE_UNLIKE,
                "a cost of " + Digits.plain(kind.of().cost()) + " for " + Said.kg(mass(kind.of())) + ", "
                        + said(StrictMath.log(perKg(kind.of()).doubleValue())) + " for a kg",
                said(kind.median() - wide) + " to " + said(kind.median() + wide) + " for a kg, as " + kind.others()
                        + " other parts of code " + kind.code() + " have it",
                "Look at the point in 'cost' and 'massKg', and at the customs code; ask the supplier where all are right");
    }

    private Stream<Remark> leadDays() {
        List<Part> led = parts.stream().filter(part -> part.leadDays() > 0).toList();
        ToDoubleFunction<Part> of = part -> StrictMath.log(part.leadDays());
        return kinds(led, of).flatMap(kind -> {
            double off = of.applyAsDouble(kind.of()) - kind.median();
            return off <= StrictMath.log(LONGER) && off >= -StrictMath.log(SHORTER)
                    ? Stream.<Remark>empty()
                    : Stream.of(leadDays(kind));
        });
    }

    private static Remark leadDays(Kind kind) {
        return new Remark(
                Said.part(kind.of()),
                Check.LEAD_UNLIKE,
                kind.of().leadDays() + " lead days",
                "about " + said(kind.median()) + ", as " + kind.others() + " other parts of code " + kind.code()
                        + " have it: no less than a sixth of it, no more than four times",
                "Look whether a digit is missing or one too many; ask the supplier or fabrication where it is right");
    }

    /**
     * A part among others of its kind, in natural logarithms.
     *
     * @param deviation median of the others' distances from their median
     */
    private record Kind(Part of, String code, int others, double median, double deviation) {}

    private static Stream<Kind> kinds(List<Part> parts, ToDoubleFunction<Part> figure) {
        var byCode = parts.stream().collect(Collectors.groupingBy(part -> key(part, code(part))));
        var byHeading = parts.stream().collect(Collectors.groupingBy(part -> key(part, heading(part))));
        Function<Part, Optional<Kind>> of = part -> {
            List<Part> close = byCode.getOrDefault(key(part, code(part)), List.of());
            return close.size() > OTHERS
                    ? Optional.of(kind(part, code(part), close, figure))
                    : Optional.of(byHeading.getOrDefault(key(part, heading(part)), List.of()))
                            .filter(all -> all.size() > OTHERS)
                            .map(all -> kind(part, heading(part), all, figure));
        };
        return parts.stream().flatMap(part -> of.apply(part).stream());
    }

    private static Kind kind(Part part, String code, List<Part> all, ToDoubleFunction<Part> figure) {
        double[] others = all.stream()
                .filter(other -> !other.equals(part))
                .mapToDouble(figure)
                .sorted()
                .toArray();
        double median = middle(others);
        double[] apart = java.util.Arrays.stream(others)
                .map(other -> Math.abs(other - median))
                .sorted()
                .toArray();
        return new Kind(part, code, others.length, median, middle(apart));
    }

    private static double middle(double[] sorted) {
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    private static String key(Part part, String code) {
        return part.source() + " " + part.unit() + " " + code;
    }

    private static String code(Part part) {
        Customs customs = part.customs();
        return customs == null ? "" : customs.hs();
    }

    private static String heading(Part part) {
        String code = code(part);
        return code.substring(0, Math.min(HEADING, code.length()));
    }

    private static BigDecimal perKg(Part part) {
        return part.cost().divide(mass(part), HEADING, RoundingMode.HALF_UP);
    }

    private static BigDecimal mass(Part part) {
        BigDecimal mass = part.massKg();
        return mass == null ? BigDecimal.ONE : mass;
    }

    private static String said(double logarithm) {
        double number = StrictMath.exp(logarithm);
        return String.format(Locale.ROOT, number < 10 ? "%.1f" : "%.0f", number);
    }
}
