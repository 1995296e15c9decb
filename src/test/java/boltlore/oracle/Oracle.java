package boltlore.oracle;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Position;
import boltlore.choices.Choices;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Kit;
import boltlore.resolution.Resolution;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** Resolves a complete choice that breaks no limit, in the plainest way. */
public final class Oracle {

    private final Catalogue catalogue;

    public Oracle(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** With nothing left out, and nobody having decided about unused brackets. */
    public Resolution.Resolved undecided(Choices choices) {
        return resolve(choices, Set.of(), false);
    }

    /** With all unused brackets left out. */
    public Resolution.Resolved withoutUnused(Choices choices) {
        return resolve(choices, new PlainBrackets(kit(choices, Set.of())).unused(), true);
    }

    private PlainKit kit(Choices choices, Set<LineName> leftOut) {
        Family family = choices.family();
        return new PlainKit(catalogue, family, new PlainChoice(family, choices.values()), leftOut);
    }

    private Resolution.Resolved resolve(Choices choices, Set<LineName> leftOut, boolean decided) {
        PlainKit kit = kit(choices, leftOut);
        PlainBrackets brackets = new PlainBrackets(kit);
        PlainWorkshop workshop = new PlainWorkshop(catalogue, kit);
        SortedSet<LineName> unused = brackets.unused();
        SortedSet<Finding> findings = new TreeSet<>(brackets.missing());
        unused.forEach(
                line -> findings.add(new Finding(decided ? FindingKind.KEPT : FindingKind.UNUSED, line.text())));
        leftOut.forEach(line -> findings.add(new Finding(FindingKind.LEFT_OUT, line.text())));
        findings.addAll(PlainPositions.of(kit));
        findings.addAll(PlainCompanions.of(kit));
        findings.addAll(PlainElectrics.of(kit));
        findings.addAll(workshop.findings());
        Kit told = new Kit(
                kit.linesIn(),
                new TreeSet<>(leftOut),
                unused,
                filled(kit),
                kit.reasons(),
                kit.quantities(),
                workshop.finishes(),
                workshop.cautions());
        return new Resolution.Resolved(choices, told, findings);
    }

    private static SortedSet<PositionName> filled(PlainKit kit) {
        SortedSet<PositionName> filled = new TreeSet<>();
        kit.family.positions().stream()
                .filter(kit.choice::filled)
                .map(Position::name)
                .forEach(filled::add);
        return filled;
    }
}
