package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Hand;
import boltlore.catalogue.Handed;
import boltlore.catalogue.Line;
import boltlore.catalogue.Pair;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** A line that only orders of one hand call for has the part of that hand. */
final class HandsFollow {

    private final Catalogue catalogue;
    private final Family family;
    private final Together together;

    private HandsFollow(Catalogue catalogue, Family family) {
        this.catalogue = catalogue;
        this.family = family;
        this.together = new Together(family);
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> {
            HandsFollow check = new HandsFollow(catalogue, family);
            return family.lines().flatMap(line -> check.of(line).stream());
        });
    }

    private Optional<Remark> of(Line line) {
        Handed handed = catalogue.part(line.part()).handed();
        return handed == null
                ? Optional.empty()
                : family.pairs().stream()
                        .filter(Pair.One.class::isInstance)
                        .map(Pair.One.class::cast)
                        .filter(pair -> pair.name().equals(handed.pair()))
                        .findFirst()
                        .filter(pair -> isWrong(line, pair, handed.hand()))
                        .map(pair -> remark(line, pair, handed.hand()));
    }

    private boolean isWrong(Line line, Pair.One pair, Hand hand) {
        String asked = hand == Hand.LEFT ? pair.leftValue() : pair.rightValue();
        String other = hand == Hand.LEFT ? pair.rightValue() : pair.leftValue();
        return together.canHold(line.when(), is(pair, other)) && !together.canHold(line.when(), is(pair, asked));
    }

    private static Condition is(Pair.One pair, String value) {
        return new Condition.Is(pair.follows(), new TreeSet<>(Set.of(value)));
    }

    private Remark remark(Line line, Pair.One pair, Hand hand) {
        String asked = hand == Hand.LEFT ? pair.rightValue() : pair.leftValue();
        return new Remark(
                Said.line(family, line),
                Check.HAND,
                line.part() + ", the " + hand.name().toLowerCase(Locale.ROOT) + " hand of pair '" + pair.name() + "'",
                "the other hand, for only orders with " + pair.follows() + "=" + asked + " call for the line",
                "Swap the parts of the two lines, or correct their conditions or the hand in the part master");
    }
}
