package boltlore.oracle;

import boltlore.catalogue.Companion;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.Hand;
import boltlore.catalogue.Line;
import boltlore.catalogue.Pair;
import boltlore.catalogue.Position;
import boltlore.measure.PartNumber;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import java.math.BigDecimal;
import java.util.SortedSet;
import java.util.TreeSet;

/** Companions that are expected and missing, and pairs whose hands are wrong. */
final class PlainCompanions {

    private final PlainKit kit;
    private final SortedSet<Finding> findings = new TreeSet<>();

    private PlainCompanions(PlainKit kit) {
        this.kit = kit;
    }

    static SortedSet<Finding> of(PlainKit kit) {
        PlainCompanions companions = new PlainCompanions(kit);
        kit.family.lines().filter(kit::in).forEach(companions::line);
        kit.family.companions().stream()
                .filter(companion -> kit.has(companion.part()))
                .forEach(companions::part);
        kit.family.pairs().forEach(companions::pair);
        return companions.findings;
    }

    private void line(Line line) {
        line.expects().forEach(expected -> expect(line.name().text(), expected));
    }

    private void part(Companion companion) {
        companion.expects().forEach(expected -> expect(companion.part().text(), expected));
    }

    private void expect(String asker, Expectation expected) {
        if (kit.choice.holds(expected.when()) && amount(expected.target()).compareTo(expected.atLeast()) < 0) {
            findings.add(
                    new Finding(FindingKind.COMPANION_MISSING, expected.target().name(), asker));
        }
    }

    private BigDecimal amount(Expectation.Target target) {
        if (target instanceof Expectation.OfPart of) {
            return kit.quantity(of.part());
        }
        int lines = 0;
        for (Position position : kit.family.positions()) {
            if (target instanceof Expectation.OfPosition of && of.position().equals(position.name())) {
                lines = kit.linesIn(position);
            }
        }
        return BigDecimal.valueOf(lines);
    }

    private void pair(Pair pair) {
        BigDecimal left = count(pair, Hand.LEFT);
        BigDecimal right = count(pair, Hand.RIGHT);
        if (pair instanceof Pair.One one) {
            String side = kit.choice.value(one.follows());
            if (side.equals(one.leftValue())) {
                hands(one, left, right);
            } else if (side.equals(one.rightValue())) {
                hands(one, right, left);
            }
        } else if (left.compareTo(right) != 0) {
            findings.add(new Finding(FindingKind.UNEQUAL_PAIR, pair.name()));
        }
    }

    private void hands(Pair.One pair, BigDecimal wanted, BigDecimal other) {
        if (other.signum() > 0) {
            FindingKind kind = wanted.signum() > 0 ? FindingKind.BOTH_HANDS : FindingKind.WRONG_HAND;
            findings.add(new Finding(kind, pair.name()));
        } else if (wanted.signum() == 0 && kit.choice.holds(pair.due())) {
            findings.add(new Finding(FindingKind.NEITHER_HAND, pair.name()));
        }
    }

    private BigDecimal count(Pair pair, Hand hand) {
        BigDecimal sum = BigDecimal.ZERO;
        for (PartNumber number : kit.quantities().keySet()) {
            var handed = kit.part(number).handed();
            if (handed != null && handed.pair().equals(pair.name()) && handed.hand() == hand) {
                sum = sum.add(kit.quantity(number));
            }
        }
        return sum;
    }
}
