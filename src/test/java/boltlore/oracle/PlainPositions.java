package boltlore.oracle;

import boltlore.catalogue.Fill;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.catalogue.Route;
import boltlore.measure.LineName;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** What stands wrongly at its position. */
final class PlainPositions {

    private final PlainKit kit;
    private final SortedSet<Finding> findings = new TreeSet<>();

    private PlainPositions(PlainKit kit) {
        this.kit = kit;
    }

    static SortedSet<Finding> of(PlainKit kit) {
        PlainPositions positions = new PlainPositions(kit);
        for (Position position : kit.family.positions()) {
            positions.overlap(position);
            positions.presence(position);
            positions.cables(position);
        }
        return positions.findings;
    }

    private void overlap(Position position) {
        if (position.fill() != Fill.ONE) {
            return;
        }
        List<String> called = position.lines().stream()
                .filter(kit.choice::called)
                .map(Line::name)
                .map(LineName::text)
                .sorted()
                .toList();
        for (int first = 0; first < called.size(); first++) {
            for (int second = first + 1; second < called.size(); second++) {
                find(FindingKind.OVERLAP, position, called.get(first) + ", " + called.get(second));
            }
        }
    }

    private void presence(Position position) {
        boolean filled = kit.choice.filled(position);
        boolean due = kit.choice.holds(position.dueOrAlways());
        if (position.fill() != Fill.FREE && due && !filled) {
            find(FindingKind.HOLE, position, "");
        }
        if (position.due() != null && !due && filled) {
            find(FindingKind.STRAY, position, "");
        }
        if (position.under() != null && filled && !kit.choice.filled(position.under())) {
            find(FindingKind.ORPHAN, position, position.under().text());
        }
    }

    private void cables(Position position) {
        for (Line line : position.lines()) {
            Integer lengthMm = kit.part(line.part()).lengthMm();
            if (lengthMm == null || !kit.in(line)) {
                continue;
            }
            for (Route route : position.routes()) {
                int most = route.needsMm() + route.slackMm();
                if (kit.choice.holds(route.when()) && (lengthMm < route.needsMm() || lengthMm > most)) {
                    String window = lengthMm + " mm, window " + route.needsMm() + " to " + most + " mm";
                    findings.add(new Finding(
                            FindingKind.CABLE_OUTSIDE_WINDOW, line.name().text(), window));
                }
            }
        }
    }

    private void find(FindingKind kind, Position position, String detail) {
        findings.add(new Finding(kind, position.name().text(), detail));
    }
}
