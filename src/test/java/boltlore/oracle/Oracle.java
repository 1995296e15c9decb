package boltlore.oracle;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Position;
import boltlore.choices.Choices;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import boltlore.order.LeftOut;
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

    /** With what the order decides about unused brackets; lines that it names must be unused. */
    public Resolution.Resolved resolve(Choices choices, LeftOut leftOut) {
        if (leftOut instanceof LeftOut.Undecided) {
            return resolve(choices, Set.of(), false);
        }
        if (leftOut instanceof LeftOut.These these) {
            return resolve(choices, these.lines(), true);
        }
        return resolve(choices, leftOut instanceof LeftOut.AllUnused ? unused(choices) : Set.of(), true);
    }

    /** Bracket lines that carry nothing when nothing is left out. */
    SortedSet<LineName> unused(Choices choices) {
        return new PlainBrackets(kit(choices, Set.of())).unused();
    }

    /** Cost and mass of a kit that has been resolved here or elsewhere, from its choices and what it leaves out. */
    public PlainSums sums(Resolution.Resolved resolved) {
        return PlainSums.of(kit(resolved.choices(), resolved.kit().leftOut()));
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
        unused.forEach(line -> findings.add(new Finding(decided ? FindingKind.KEPT : FindingKind.UNUSED, line.text())));
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
