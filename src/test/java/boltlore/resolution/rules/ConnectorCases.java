package boltlore.resolution.rules;

import static boltlore.resolution.rules.Named.byLine;
import static boltlore.resolution.rules.Named.line;
import static boltlore.resolution.rules.Named.position;
import static boltlore.resolution.rules.RuleCase.rule;

import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.rules.Facts.Cable;
import boltlore.resolution.rules.Facts.ConditionKey;
import boltlore.resolution.rules.Facts.FittedPort;
import boltlore.resolution.rules.Facts.Holds;
import boltlore.resolution.rules.Facts.InKit;
import boltlore.resolution.rules.Facts.RouteWindow;
import java.util.List;

/** Rules about high-voltage connectors and cables. */
final class ConnectorCases {

    private static final FittedPort OPEN = new FittedPort("JB-1", "compressor", "BP-1", true);
    private static final InKit CABLE_IN = new InKit(byLine("cable"));
    private static final RouteWindow WINDOW = new RouteWindow(position("cable"), 2000, 2150, new ConditionKey(1));

    private ConnectorCases() {}

    static List<RuleCase> all() {
        return List.of(
                rule("A high-voltage connector is mated, or closed by its blank, or the interlock stays open")
                        .given(OPEN)
                        .concludes(new Finding(FindingKind.INTERLOCK_OPEN, "JB-1/compressor", "BP-1"))
                        .butNotWhen(OPEN, new FittedPort("JB-1", "compressor", "BP-1", false)),
                rule("A cable lies in the window of its route")
                        .given(cableOf(1999), CABLE_IN, WINDOW, new Holds(new ConditionKey(1)))
                        .concludes(outside("1999"))
                        .butNotWhen(cableOf(1999), cableOf(2000)),
                rule("A cable lies in the window of its route")
                        .given(cableOf(2151), CABLE_IN, WINDOW, new Holds(new ConditionKey(1)))
                        .concludes(outside("2151"))
                        .butNotWhen(cableOf(2151), cableOf(2150)),
                rule("A cable lies in the window of its route")
                        .given(cableOf(2151), CABLE_IN, WINDOW, new Holds(new ConditionKey(1)))
                        .concludes(outside("2151"))
                        .butNotWithout(new Holds(new ConditionKey(1))),
                rule("A cable lies in the window of its route")
                        .given(cableOf(2151), CABLE_IN, WINDOW, new Holds(new ConditionKey(1)))
                        .concludes(outside("2151"))
                        .butNotWithout(CABLE_IN));
    }

    private static Cable cableOf(int lengthMm) {
        return new Cable(line("cable"), byLine("cable"), position("cable"), lengthMm);
    }

    private static Finding outside(String lengthMm) {
        return new Finding(FindingKind.CABLE_OUTSIDE_WINDOW, "cable", lengthMm + " mm, window 2000 to 2150 mm");
    }
}
