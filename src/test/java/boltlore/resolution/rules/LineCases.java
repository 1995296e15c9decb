package boltlore.resolution.rules;

import static boltlore.resolution.rules.Named.byLine;
import static boltlore.resolution.rules.Named.byPart;
import static boltlore.resolution.rules.Named.line;
import static boltlore.resolution.rules.Named.part;
import static boltlore.resolution.rules.Named.position;
import static boltlore.resolution.rules.RuleCase.rule;

import boltlore.resolution.Reason;
import boltlore.resolution.Way;
import boltlore.resolution.rules.Facts.Brings;
import boltlore.resolution.rules.Facts.CaseAsksEmpty;
import boltlore.resolution.rules.Facts.CaseAsksFilled;
import boltlore.resolution.rules.Facts.CaseFails;
import boltlore.resolution.rules.Facts.ConditionCase;
import boltlore.resolution.rules.Facts.ConditionKey;
import boltlore.resolution.rules.Facts.Filled;
import boltlore.resolution.rules.Facts.Holds;
import boltlore.resolution.rules.Facts.InKit;
import boltlore.resolution.rules.Facts.LineOffered;
import boltlore.resolution.rules.Facts.LineSelected;
import boltlore.resolution.rules.Facts.OmissionsStageDone;
import boltlore.resolution.rules.Facts.StaysOut;
import java.util.List;

/** Rules by which lines join the kit and parts bring parts. */
final class LineCases {

    private static final ConditionKey CONDITION = new ConditionKey(1);
    private static final Holds HOLDS = new Holds(CONDITION);
    private static final LineSelected HOSES = new LineSelected(line("hoses"), position("hoses"), false);
    private static final InKit HOSES_IN = new InKit(byLine("hoses"));
    private static final InKit COMPRESSOR_IN = new InKit(byPart("CO-1"));

    private LineCases() {}

    static List<RuleCase> all() {
        return List.of(
                rule("A case of a condition fails while a position it asks for is empty")
                        .given(new CaseAsksFilled(CONDITION, 0, position("compressor")))
                        .concludes(new CaseFails(CONDITION, 0))
                        .butNotWith(new Filled(position("compressor"))),
                rule("A case of a condition fails while a position it wants empty is filled")
                        .given(
                                new CaseAsksEmpty(CONDITION, 0, position("compressor")),
                                new Filled(position("compressor")))
                        .concludes(new CaseFails(CONDITION, 0))
                        .butNotWithout(new Filled(position("compressor"))),
                rule("A condition holds when one of its cases does not fail")
                        .given(new ConditionCase(CONDITION, 0))
                        .concludes(HOLDS)
                        .butNotWith(new CaseFails(CONDITION, 0)),
                rule("A condition holds when one of its cases does not fail")
                        .given(
                                new ConditionCase(CONDITION, 0),
                                new ConditionCase(CONDITION, 1),
                                new CaseFails(CONDITION, 0))
                        .concludes(HOLDS)
                        .butNotWith(new CaseFails(CONDITION, 1)),
                rule("A line is called for when its condition holds")
                        .given(new LineOffered(line("hoses"), position("hoses"), false, CONDITION), HOLDS)
                        .concludes(HOSES)
                        .butNotWhen(HOLDS, new Holds(new ConditionKey(2))),
                rule("A line that is called for fills its position")
                        .given(new LineOffered(line("hoses"), position("hoses"), false, CONDITION), HOLDS)
                        .concludes(new Filled(position("hoses")))
                        .butNotWithout(HOLDS),
                rule("A line that is called for joins the kit unless the order leaves it out")
                        .given(HOSES, new OmissionsStageDone())
                        .concludes(HOSES_IN)
                        .butNotWith(new StaysOut(line("hoses"))),
                rule("A line that is called for joins the kit unless the order leaves it out")
                        .given(HOSES, new OmissionsStageDone())
                        .concludes(HOSES_IN)
                        .butNotWithout(new OmissionsStageDone()),
                rule("A line in the kit brings its part")
                        .given(HOSES_IN, new Brings(byLine("hoses"), Way.LINE, part("HO-1"), ConditionKey.ALWAYS))
                        .concludes(new Reason(byLine("hoses"), Way.LINE, part("HO-1")))
                        .butNotWhen(HOSES_IN, new InKit(byLine("other-hoses"))),
                rule("An assembly in the kit brings what it contains")
                        .given(
                                COMPRESSOR_IN,
                                new Brings(byPart("CO-1"), Way.CONTAINS, part("SEAL"), ConditionKey.ALWAYS))
                        .concludes(new Reason(byPart("CO-1"), Way.CONTAINS, part("SEAL")))
                        .butNotWithout(COMPRESSOR_IN),
                rule("A part or line in the kit brings the companions it needs")
                        .given(COMPRESSOR_IN, HOLDS, new Brings(byPart("CO-1"), Way.NEEDS, part("OIL-1"), CONDITION))
                        .concludes(new Reason(byPart("CO-1"), Way.NEEDS, part("OIL-1")))
                        .butNotWithout(HOLDS),
                rule("A part or line in the kit brings the companions it needs")
                        .given(HOSES_IN, HOLDS, new Brings(byLine("hoses"), Way.NEEDS, part("CLIP"), CONDITION))
                        .concludes(new Reason(byLine("hoses"), Way.NEEDS, part("CLIP")))
                        .butNotWithout(HOSES_IN),
                rule("A part that something brings is in the kit")
                        .given(HOSES_IN, new Brings(byLine("hoses"), Way.LINE, part("HO-1"), ConditionKey.ALWAYS))
                        .concludes(new InKit(byPart("HO-1")))
                        .butNotWithout(HOSES_IN));
    }
}
