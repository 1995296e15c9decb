package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Lifting;
import boltlore.catalogue.Part;
import boltlore.measure.Digits;
import boltlore.measure.Party;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Figures of the workshop that read soundly and cannot be: what people lift, what an old unit brings, who shares customs. */
final class ShopPlausible {

    /** Reference mass for lifting by one person of the general working population: ISO 11228-1, from memory. */
    private static final BigDecimal MOST_FOR_ONE_KG = BigDecimal.valueOf(25);

    /** Two lift less than twice what one does; common practice, no source. */
    private static final BigDecimal PERSONS = BigDecimal.valueOf(2);

    /** Monaco belongs to that territory by the same article as its members: Regulation (EU) No 952/2013, Article 4, from memory. */
    private static final String WITH_THEM = "MC";

    private ShopPlausible() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        Stream<Remark> cores = catalogue.parts().values().stream().flatMap(part -> core(part).stream());
        return Stream.of(cores, lifting(catalogue.shipping().lifting()), union(catalogue))
                .flatMap(remarks -> remarks);
    }

    /** The part's cost holds what its old unit brings back. */
    private static Optional<Remark> core(Part part) {
        BigDecimal credit = part.upkeep().coreCredit();
        return credit == null || credit.compareTo(part.cost()) <= 0
                ? Optional.empty()
                : Optional.of(new Remark(
                        Said.part(part),
                        Check.CORE_CREDIT,
                        "a core credit of " + credit.toPlainString() + " for a part that costs "
                                + part.cost().toPlainString(),
                        "at most the cost, which holds it",
                        "Check 'coreCredit' and 'cost'"));
    }

    private static Stream<Remark> lifting(Lifting lifting) {
        BigDecimal one = lifting.onePersonKg();
        BigDecimal two = lifting.twoPersonsKg();
        List<Remark> remarks = new ArrayList<>();
        if (one.compareTo(MOST_FOR_ONE_KG) > 0) {
            remarks.add(lifting(
                    Digits.plain(one) + " kg for one person",
                    "at most " + MOST_FOR_ONE_KG + " kg, the reference mass of ISO 11228-1"));
        }
        if (two.compareTo(one.min(MOST_FOR_ONE_KG).multiply(PERSONS)) > 0) {
            remarks.add(lifting(
                    Digits.plain(two) + " kg for two persons, " + Digits.plain(one) + " kg for one",
                    "at most twice what one lifts"));
        }
        return remarks.stream();
    }

    private static Remark lifting(String found, String expected) {
        return new Remark(
                "lifting of shipping.json",
                Check.LIFTING_LIMIT,
                found,
                expected,
                "Check 'lifting': the cautions on parts and crates follow from it");
    }

    private static Stream<Remark> union(Catalogue catalogue) {
        List<String> union = catalogue.shipping().customsUnion();
        String home = catalogue.shipping().consignor().country();
        List<Remark> remarks = new ArrayList<>();
        Set<String> known = Set.of(Locale.getISOCountries());
        union.stream()
                .filter(country -> !known.contains(country))
                .forEach(country ->
                        remarks.add(union(country + ", which is no country", "codes of ISO 3166-1 alpha-2")));
        if (!union.isEmpty() && !home.isEmpty() && !union.contains(home)) {
            remarks.add(
                    union("a union without " + home + ", from where is sent", "the consignor's own union, or none"));
        }
        if (union.stream().anyMatch(Party.EUROPEAN_UNION::contains)) {
            union.stream()
                    .filter(country -> !Party.EUROPEAN_UNION.contains(country) && !country.equals(WITH_THEM))
                    .forEach(country -> remarks.add(union(
                            country + " beside members of the European Union",
                            "members of the Union alone: papers are asked for at any other border")));
        }
        return remarks.stream();
    }

    private static Remark union(String found, String expected) {
        return new Remark(
                "customs union of shipping.json",
                Check.CUSTOMS_UNION,
                found,
                expected,
                "Check 'customsUnion': no customs papers are written within it");
    }
}
