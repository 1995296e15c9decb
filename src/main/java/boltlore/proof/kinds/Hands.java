package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Hand;
import boltlore.catalogue.Handed;
import boltlore.catalogue.Pair;
import boltlore.catalogue.Part;
import boltlore.logic.Any;
import boltlore.logic.Term;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.proof.KitView;
import java.util.List;
import java.util.stream.Stream;

/** The parts of a pair by their hand, and when they are in a kit. */
record Hands(KitView kit, String pair) {

    static Stream<Pair.One> following(KitView kit) {
        return kit.family().pairs().stream().filter(Pair.One.class::isInstance).map(Pair.One.class::cast);
    }

    List<PartNumber> parts(Hand hand) {
        return kit.bringings().parts().stream().filter(part -> isOf(part, hand)).toList();
    }

    private boolean isOf(PartNumber number, Hand hand) {
        Part part = kit.catalogue().part(number);
        Handed handed = part.handed();
        return handed != null && handed.pair().equals(pair) && handed.hand() == hand;
    }

    Condition present(Hand hand) {
        return Any.of(parts(hand).stream().map(kit.parts()::present).toList());
    }

    List<Term> terms(Hand hand) {
        return parts(hand).stream()
                .flatMap(part -> kit.parts().terms(part).stream())
                .toList();
    }

    /** The lines that bring parts of the pair. */
    List<LineName> lines() {
        return Stream.of(Hand.LEFT, Hand.RIGHT)
                .flatMap(hand -> parts(hand).stream())
                .flatMap(part -> DeadPart.lines(kit, part).stream())
                .distinct()
                .toList();
    }

    /** When the option asks for the left hand. */
    static Condition asksLeft(Pair.One pair) {
        return Value.is(pair.follows(), pair.leftValue());
    }

    static Condition asksRight(Pair.One pair) {
        return Value.is(pair.follows(), pair.rightValue());
    }
}
