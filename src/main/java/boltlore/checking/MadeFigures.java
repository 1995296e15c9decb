package boltlore.checking;

import boltlore.catalogue.Blank;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Cut;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.MadeCost;
import boltlore.catalogue.Material;
import boltlore.catalogue.Part;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.Source;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a made part is said to be, against what it is made of: its cost against its operations and material, its mass, coated
 * area, section and envelope against its blank. Holes and cut-outs make it lighter than its blank, nothing makes it heavier.
 */
final class MadeFigures {

    /** What offcuts, consumables and coating add at most, and what falls short by rounding; workshop's own values. */
    private static final BigDecimal COST_MOST = new BigDecimal("1.75");

    private static final BigDecimal COST_LEAST = new BigDecimal("0.75");

    /** A blank of which more than half is cut away is nested another way; common practice, no source. */
    private static final BigDecimal BLANK_LEAST = new BigDecimal("0.5");

    private static final BigDecimal BLANK_MOST = new BigDecimal("1.03");

    /** Edges of thick plate add to the area. */
    private static final BigDecimal AREA_MOST = new BigDecimal("1.35");

    /** Flat bars and flanges lie within what legs and width come to, give or take what bends take. */
    private static final BigDecimal ENVELOPE_MOST = new BigDecimal("1.05");

    private static final int MM3_IN_M3 = 9;
    private static final int MM2_IN_M2 = 6;
    private static final BigDecimal SIDES = BigDecimal.valueOf(2);

    private final Catalogue catalogue;

    private MadeFigures(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        MadeFigures check = new MadeFigures(catalogue);
        return catalogue.parts().values().stream()
                .filter(part -> part.source() == Source.MAKE)
                .flatMap(part -> Stream.concat(check.cost(part).stream(), check.blank(part)));
    }

    /** Nothing where the price book does not say what made parts cost, or the part costs nothing. */
    private Optional<Remark> cost(Part part) {
        PriceBook prices = catalogue.prices();
        MadeCost made = prices == null ? null : prices.madeCost();
        if (made == null || made.labourPerHour().signum() == 0 || part.cost().signum() == 0) {
            return Optional.empty();
        }
        BigDecimal labour = made.labour(part);
        BigDecimal material = material(part);
        BigDecimal expected = labour.add(material);
        boolean agrees = part.cost().compareTo(expected.multiply(COST_MOST)) <= 0
                && part.cost().compareTo(expected.multiply(COST_LEAST)) >= 0;
        return agrees || expected.signum() == 0
                ? Optional.empty()
                : Optional.of(
                        new Remark(
                                Said.part(part),
                                Check.MADE_COST,
                                "a cost of " + Digits.plain(part.cost()),
                                "about " + money(expected) + ": " + money(labour) + " of work by its operations and "
                                        + money(material) + " of material, up to three quarters more",
                                "Look at the point in 'cost', in its operations' minutes, in its mass, and in the material's price"));
    }

    /** Its own: sheet by its mass, bars by their length at the cheapest bar. */
    private BigDecimal material(Part part) {
        BigDecimal sheet = Optional.ofNullable(part.making().material())
                .map(catalogue.materials()::get)
                .map(Material::pricePerKg)
                .map(price -> price.multiply(part.massKg() == null ? BigDecimal.ZERO : part.massKg()))
                .orElse(BigDecimal.ZERO);
        return part.making().cuts().stream().map(this::bars).reduce(sheet, BigDecimal::add);
    }

    private BigDecimal bars(Cut cut) {
        Material material = catalogue.materials().get(cut.material());
        return material == null || material.bars() == null
                ? BigDecimal.ZERO
                : material.bars().lengths().stream()
                        .map(bar -> bar.cost().divide(BigDecimal.valueOf(bar.lengthMm()), MathContext.DECIMAL64))
                        .min(Comparator.naturalOrder())
                        .orElse(BigDecimal.ZERO)
                        .multiply(cut.lengthMm())
                        .multiply(BigDecimal.valueOf(cut.count()));
    }

    private Stream<Remark> blank(Part part) {
        Blank blank = part.making().blank();
        Material material = part.making().material() == null
                ? null
                : catalogue.materials().get(part.making().material());
        BigDecimal thick = material == null ? null : material.thicknessMm();
        if (blank == null || material == null || thick == null) {
            return Stream.empty();
        }
        BigDecimal legs = blank.legsMm().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal mm2 = blank.widthMm().multiply(legs);
        BigDecimal kg = mm2.multiply(thick).multiply(material.densityKgM3()).movePointLeft(MM3_IN_M3);
        Stream<Remark> mass = within(part.massKg(), kg, BLANK_LEAST, BLANK_MOST)
                ? Stream.of()
                : Stream.of(remark(
                        part,
                        "'massKg' " + Digits.plain(part.massKg() == null ? BigDecimal.ZERO : part.massKg()),
                        "between half of " + Said.kg(kg) + ", which its blank weighs, and all of it"));
        CoatingSpec coat = part.coat();
        return coat == null
                ? mass
                : Stream.of(mass, area(part, coat, mm2), section(part, coat, thick), envelope(part, blank, legs, coat))
                        .flatMap(remarks -> remarks);
    }

    private static Stream<Remark> area(Part part, CoatingSpec coat, BigDecimal mm2) {
        BigDecimal m2 = mm2.multiply(SIDES).movePointLeft(MM2_IN_M2);
        return within(coat.areaM2(), m2, BLANK_LEAST, AREA_MOST)
                ? Stream.of()
                : Stream.of(remark(
                        part,
                        "'areaM2' " + Digits.plain(coat.areaM2()),
                        "about " + Digits.upTo(m2, 3) + " m², both sides of its blank, at least half of it"));
    }

    private static Stream<Remark> section(Part part, CoatingSpec coat, BigDecimal thick) {
        return coat.thinnestMm().compareTo(thick) <= 0
                        && coat.thickestMm().compareTo(thick) >= 0
                        && coat.thickestMm().compareTo(thick.multiply(SIDES)) <= 0
                        && thick.compareTo(coat.thinnestMm().multiply(SIDES)) <= 0
                ? Stream.of()
                : Stream.of(remark(
                        part,
                        "a section of " + Digits.plain(coat.thinnestMm()) + " to " + Digits.plain(coat.thickestMm())
                                + " mm",
                        "one that holds the " + Digits.plain(thick) + " mm of its sheet, and at most two sheets"));
    }

    private static Stream<Remark> envelope(Part part, Blank blank, BigDecimal legs, CoatingSpec coat) {
        EnvelopeMm envelope = coat.envelope();
        if (envelope == null) {
            return Stream.empty();
        }
        BigDecimal longest =
                BigDecimal.valueOf(Math.max(envelope.length(), Math.max(envelope.width(), envelope.height())));
        BigDecimal leg = blank.legsMm().stream().max(Comparator.naturalOrder()).orElse(BigDecimal.ZERO);
        BigDecimal least = leg.max(blank.widthMm())
                .multiply(BLANK_MOST.subtract(ENVELOPE_MOST).add(BigDecimal.ONE));
        BigDecimal most = legs.max(blank.widthMm()).multiply(ENVELOPE_MOST);
        return longest.compareTo(least) >= 0 && longest.compareTo(most) <= 0
                ? Stream.of()
                : Stream.of(remark(
                        part,
                        "an envelope " + Digits.plain(longest) + " mm long",
                        Digits.upTo(least, 0) + " to " + Digits.upTo(most, 0)
                                + " mm, from its blank's longest leg or width to its whole length"));
    }

    private static boolean within(@Nullable BigDecimal figure, BigDecimal of, BigDecimal least, BigDecimal most) {
        return figure == null
                || (figure.compareTo(of.multiply(least)) >= 0 && figure.compareTo(of.multiply(most)) <= 0);
    }

    private static Remark remark(Part part, String found, String expected) {
        return new Remark(
                Said.part(part),
                Check.BLANK,
                found,
                expected,
                "Look at the point in it, in the blank's width and legs, and at the material's thickness and density");
    }

    private static String money(BigDecimal amount) {
        return Digits.plain(amount.setScale(2, RoundingMode.HALF_UP));
    }
}
