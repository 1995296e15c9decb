package boltlore.oracle;

import static boltlore.trial.TrialPart.part;

import boltlore.catalogue.Feature;
import boltlore.catalogue.Hand;
import boltlore.catalogue.Joined;
import boltlore.catalogue.Need;
import boltlore.trial.Say;
import boltlore.trial.TrialPart;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Parts by chance; each contains and needs only parts of higher numbers. */
final class RandomParts {

    private final Dice dice;
    private final int count;
    private final Set<Integer> ofTheVehicle = new HashSet<>();

    RandomParts(Dice dice, int count) {
        this.dice = dice;
        this.count = count;
        for (int number = 0; number < count - 1; number++) {
            if (dice.once(8)) {
                ofTheVehicle.add(number);
            }
        }
    }

    String any() {
        return name(dice.below(count));
    }

    static String name(int number) {
        return "P%02d".formatted(number);
    }

    String after(int number) {
        return name(dice.between(number + 1, count - 1));
    }

    /** What the vehicle brings itself lies in no assembly; the last part is always supplied. */
    private String supplied(int after) {
        int child = dice.between(after + 1, count - 1);
        return name(ofTheVehicle.contains(child) ? count - 1 : child);
    }

    TrialPart draw(int number) {
        TrialPart part =
                part(name(number)).costs(dice.oneOf("0.35", "12", "340.50")).bin(dice.oneOf("", "F-01-01-A-01"));
        if (number < count - 1) {
            if (!ofTheVehicle.contains(number)) {
                structure(part, number);
            }
            if (dice.once(3)) {
                part.needs(need(after(number)));
            }
        }
        finishing(part);
        connecting(part);
        if (ofTheVehicle.contains(number)) {
            part.ofTheVehicle();
        }
        return part;
    }

    /** The part master is free of conditions. */
    private Need need(String part) {
        return dice.once(3)
                ? Say.joint(dice.oneOf("front-rail", "rear-rail"), part, dice.quantity())
                : Say.each(part, dice.quantity());
    }

    private void structure(TrialPart part, int number) {
        if (dice.once(3)) {
            part.contains(supplied(number), dice.quantity());
            if (dice.once(2)) {
                part.contains(name(count - 1), dice.quantity());
            }
            part.joined(dice.once(2) ? Joined.WELDED : Joined.BOLTED);
        }
        if (dice.once(4)) {
            part.stocked();
        }
    }

    private void finishing(TrialPart part) {
        Feature feature = new Feature(
                dice.once(2) ? Feature.Kind.THREAD : Feature.Kind.EARTH,
                dice.oneOf("M8", "20", "M12"),
                1,
                dice.once(3) ? Feature.Treat.CHASED : Feature.Treat.MASKED);
        switch (dice.below(6)) {
            case 0 -> part.coatedAs("frame", feature);
            case 1 -> part.coatedAs("bracket", feature);
            case 2 -> part.coatedIn("outside");
            default -> part.lengthMm(dice.oneOf(List.of(1_000, 1_100, 1_200)));
        }
        if (dice.once(4)) {
            part.caution(dice.oneOf("high-voltage", "lift-two"));
        }
    }

    private void connecting(TrialPart part) {
        if (dice.once(4)) {
            part.hand(dice.oneOf("pedals", "brackets"), dice.once(2) ? Hand.LEFT : Hand.RIGHT);
        }
        if (dice.once(4)) {
            part.port("hv-1", dice.once(4) ? null : any(), any());
        }
        if (dice.once(6)) {
            String mate = any();
            String other = any();
            part.port("hv-2", any(), mate.equals(other) ? new String[] {mate} : new String[] {mate, other});
        }
    }
}
