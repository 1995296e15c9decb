package boltlore.resolution.rules;

import static boltlore.resolution.rules.Named.line;
import static boltlore.resolution.rules.Named.position;
import static boltlore.resolution.rules.RuleCase.rule;

import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.rules.Facts.ConditionKey;
import boltlore.resolution.rules.Facts.Due;
import boltlore.resolution.rules.Facts.DueOnly;
import boltlore.resolution.rules.Facts.Filled;
import boltlore.resolution.rules.Facts.Holds;
import boltlore.resolution.rules.Facts.LineSelected;
import boltlore.resolution.rules.Facts.OneLineOnly;
import boltlore.resolution.rules.Facts.Under;
import java.util.List;

/** Rules about what must and must not stand at a position. */
final class PositionCases {

    private static final ConditionKey CONDITION = new ConditionKey(1);
    private static final Holds HOLDS = new Holds(CONDITION);
    private static final Filled PUMP = new Filled(position("pump"));
    private static final LineSelected SECOND = new LineSelected(line("pump-b"), position("pump"), false);

    private PositionCases() {}

    static List<RuleCase> all() {
        return List.of(
                rule("A position for one line takes no second line")
                        .given(
                                new OneLineOnly(position("pump")),
                                new LineSelected(line("pump-a"), position("pump"), false),
                                SECOND)
                        .concludes(new Finding(FindingKind.OVERLAP, "pump", "pump-a, pump-b"))
                        .butNotWhen(SECOND, new LineSelected(line("pump-b"), position("other-pump"), false)),
                rule("A position for one line takes no second line")
                        .given(
                                new OneLineOnly(position("pump")),
                                new LineSelected(line("pump-a"), position("pump"), false),
                                SECOND)
                        .concludes(new Finding(FindingKind.OVERLAP, "pump", "pump-a, pump-b"))
                        .butNotWithout(new OneLineOnly(position("pump"))),
                rule("A position that is due must be filled")
                        .given(new Due(position("pump"), CONDITION), HOLDS)
                        .concludes(new Finding(FindingKind.HOLE, "pump"))
                        .butNotWith(PUMP),
                rule("A position that is due must be filled")
                        .given(new Due(position("pump"), CONDITION), HOLDS)
                        .concludes(new Finding(FindingKind.HOLE, "pump"))
                        .butNotWithout(HOLDS),
                rule("A position that is not due should stay empty")
                        .given(new DueOnly(position("pump"), CONDITION), PUMP)
                        .concludes(new Finding(FindingKind.STRAY, "pump"))
                        .butNotWith(HOLDS),
                rule("What hangs on another position needs that position filled")
                        .given(new Under(position("pump"), position("tank")), PUMP)
                        .concludes(new Finding(FindingKind.ORPHAN, "pump", "tank"))
                        .butNotWith(new Filled(position("tank"))));
    }
}
