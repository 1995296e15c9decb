package boltlore.resolution.rules;

import static boltlore.resolution.rules.Named.byPart;
import static boltlore.resolution.rules.RuleCase.rule;

import boltlore.catalogue.Hand;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.rules.Facts.Amount;
import boltlore.resolution.rules.Facts.ConditionKey;
import boltlore.resolution.rules.Facts.Expects;
import boltlore.resolution.rules.Facts.HandInKit;
import boltlore.resolution.rules.Facts.HandedPart;
import boltlore.resolution.rules.Facts.Holds;
import boltlore.resolution.rules.Facts.InKit;
import boltlore.resolution.rules.Facts.PairCount;
import boltlore.resolution.rules.Facts.PairFollows;
import java.math.BigDecimal;
import java.util.List;

/** Rules about left and right parts, and about parts that expect others beside them. */
final class CompanionCases {

    private static final ConditionKey CONDITION = new ConditionKey(1);
    private static final Holds HOLDS = new Holds(CONDITION);
    private static final InKit PEDALS_IN = new InKit(byPart("PB-RH"));
    private static final PairFollows LEFT_WANTED = new PairFollows("pedals", Hand.LEFT, Hand.RIGHT, CONDITION);
    private static final HandInKit LEFT = new HandInKit("pedals", Hand.LEFT);
    private static final HandInKit RIGHT = new HandInKit("pedals", Hand.RIGHT);
    private static final InKit INLET_IN = new InKit(byPart("CI-2"));
    private static final Expects TWO_LOCKS =
            new Expects(byPart("CI-2"), "LA-1", "LA-1", new BigDecimal("2"), CONDITION);
    private static final Amount ONE_LOCK = new Amount("LA-1", BigDecimal.ONE);

    private CompanionCases() {}

    static List<RuleCase> all() {
        return List.of(
                rule("A handed part puts its hand into the kit")
                        .given(new HandedPart(byPart("PB-RH"), "pedals", Hand.RIGHT), PEDALS_IN)
                        .concludes(RIGHT)
                        .butNotWithout(PEDALS_IN),
                rule("The hand of a pair follows the driver's side")
                        .given(LEFT_WANTED, RIGHT)
                        .concludes(new Finding(FindingKind.WRONG_HAND, "pedals"))
                        .butNotWhen(RIGHT, LEFT),
                rule("The hand of a pair follows the driver's side")
                        .given(LEFT_WANTED, RIGHT)
                        .concludes(new Finding(FindingKind.WRONG_HAND, "pedals"))
                        .butNotWith(LEFT),
                rule("Of a pair that ships one hand never both are in a kit")
                        .given(LEFT_WANTED, LEFT, RIGHT)
                        .concludes(new Finding(FindingKind.BOTH_HANDS, "pedals"))
                        .butNotWithout(RIGHT),
                rule("Of a pair that is due one hand is in the kit")
                        .given(LEFT_WANTED, HOLDS)
                        .concludes(new Finding(FindingKind.NEITHER_HAND, "pedals"))
                        .butNotWith(LEFT),
                rule("Of a pair that is due one hand is in the kit")
                        .given(LEFT_WANTED, HOLDS)
                        .concludes(new Finding(FindingKind.NEITHER_HAND, "pedals"))
                        .butNotWithout(HOLDS),
                rule("Of a pair that ships both hands there are as many left as right")
                        .given(pairOf("2", "1"))
                        .concludes(new Finding(FindingKind.UNEQUAL_PAIR, "brackets"))
                        .butNotWhen(pairOf("2", "1"), pairOf("2", "2.0")),
                rule("A companion that is expected must be in the kit")
                        .given(TWO_LOCKS, HOLDS, INLET_IN, ONE_LOCK)
                        .concludes(new Finding(FindingKind.COMPANION_MISSING, "LA-1", "CI-2"))
                        .butNotWhen(ONE_LOCK, new Amount("LA-1", new BigDecimal("2.0"))),
                rule("A companion that is expected must be in the kit")
                        .given(TWO_LOCKS, HOLDS, INLET_IN)
                        .concludes(new Finding(FindingKind.COMPANION_MISSING, "LA-1", "CI-2"))
                        .butNotWithout(INLET_IN),
                rule("A companion that is expected must be in the kit")
                        .given(TWO_LOCKS, HOLDS, INLET_IN)
                        .concludes(new Finding(FindingKind.COMPANION_MISSING, "LA-1", "CI-2"))
                        .butNotWithout(HOLDS));
    }

    private static PairCount pairOf(String left, String right) {
        return new PairCount("brackets", new BigDecimal(left), new BigDecimal(right));
    }
}
