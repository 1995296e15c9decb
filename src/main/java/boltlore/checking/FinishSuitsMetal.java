package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Finish;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Material;
import boltlore.catalogue.Part;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A coat holds on the metal that its pre-treatment prepares: zinc phosphate is for steel, aluminium wants another bath, and
 * stainless steel lets most powders go. Common practice, no source; which finish is for which metal the workshop says.
 */
final class FinishSuitsMetal {

    private final Catalogue catalogue;

    private FinishSuitsMetal(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        FinishSuitsMetal check = new FinishSuitsMetal(catalogue);
        return catalogue.parts().values().stream().flatMap(check::of);
    }

    private Stream<Remark> of(Part part) {
        Set<String> metals = part.coat() == null ? Set.of() : metals(part);
        return metals.isEmpty()
                ? Stream.empty()
                : finishes(part)
                        .filter(finish ->
                                !finish.metals().isEmpty() && !finish.metals().containsAll(metals))
                        .map(finish -> remark(part, metals, finish));
    }

    private static Remark remark(Part part, Set<String> metals, Finish finish) {
        return new Remark(
                Said.part(part),
                Check.FINISH_METAL,
                "of " + String.join(" and ", metals) + ", with finish " + finish.name() + " ("
                        + (finish.preTreatment().isEmpty() ? "no pre-treatment said" : finish.preTreatment()) + ")",
                "a finish for that metal; this one is for " + String.join(", ", finish.metals()),
                "Give the part another finish or role, or correct its material or the finish's 'metals'");
    }

    /** Every finish that some order may give it, each once. */
    private Stream<Finish> finishes(Part part) {
        String role = Objects.requireNonNull(part.coat()).role();
        Stream<String> names = role == null
                ? Stream.ofNullable(part.coat().finish())
                : catalogue.families().values().stream().flatMap(family -> named(family, role));
        TreeMap<String, Finish> known = names.filter(catalogue.finishes()::containsKey)
                .collect(Collectors.toMap(name -> name, catalogue.finishes()::get, (a, b) -> a, TreeMap::new));
        return known.values().stream();
    }

    private static Stream<String> named(Family family, String role) {
        FinishRule rule = family.finishes().get(role);
        if (rule instanceof FinishRule.Fixed fixed) {
            return Stream.of(fixed.finish());
        }
        return rule instanceof FinishRule.DecidedBy by
                ? family.option(by.option()).stream()
                        .flatMap(option -> option.values().stream())
                        .map(value -> value.facts().finish())
                        .filter(Objects::nonNull)
                : Stream.empty();
    }

    /** Its own, and where it says none, those of what is in it. */
    private Set<String> metals(Part part) {
        Set<String> own = CoatedMass.own(catalogue, part)
                .map(Material::metal)
                .filter(Objects::nonNull)
                .collect(Collectors.toCollection(TreeSet::new));
        return own.isEmpty()
                ? part.contains().stream()
                        .flatMap(child -> metals(catalogue.part(child.part())).stream())
                        .collect(Collectors.toCollection(TreeSet::new))
                : own;
    }
}
