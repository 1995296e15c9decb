package boltlore.oracle;

import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.measure.LineName;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Which brackets carry nothing, and what lacks its bracket. */
final class PlainBrackets {

    private final PlainKit kit;

    PlainBrackets(PlainKit kit) {
        this.kit = kit;
    }

    /** In, and not useful. */
    SortedSet<LineName> unused() {
        SortedSet<LineName> unused = new TreeSet<>();
        kit.family
                .lines()
                .filter(line -> line.isBracket() && kit.in(line) && !useful(line))
                .forEach(line -> unused.add(line.name()));
        return unused;
    }

    /** Some called line at a position it carries carries nothing itself, or is itself useful. */
    private boolean useful(Line bracket) {
        return kit.family.positions().stream()
                .filter(position -> bracket.carries().contains(position.name()))
                .flatMap(position -> position.lines().stream())
                .anyMatch(line -> kit.choice.called(line) && (!line.isBracket() || useful(line)));
    }

    SortedSet<Finding> missing() {
        SortedSet<Finding> missing = new TreeSet<>();
        SortedSet<LineName> linesIn = kit.linesIn();
        for (Position position : kit.family.positions()) {
            for (List<LineName> list : position.heldBy()) {
                if (kit.choice.filled(position) && list.stream().noneMatch(linesIn::contains)) {
                    String names = list.stream().map(LineName::text).sorted().collect(Collectors.joining(", "));
                    missing.add(new Finding(
                            FindingKind.BRACKET_MISSING, position.name().text(), names));
                }
            }
        }
        return missing;
    }
}
