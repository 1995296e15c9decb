package boltlore.resolution.rules;

import static boltlore.resolution.rules.Named.byLine;
import static boltlore.resolution.rules.Named.byPart;
import static boltlore.resolution.rules.Named.part;
import static boltlore.resolution.rules.RuleCase.rule;

import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Reason;
import boltlore.resolution.Way;
import boltlore.resolution.rules.Facts.BareFeature;
import boltlore.resolution.rules.Facts.CautionOn;
import boltlore.resolution.rules.Facts.CautionStands;
import boltlore.resolution.rules.Facts.Coated;
import boltlore.resolution.rules.Facts.InKit;
import boltlore.resolution.rules.Facts.MaskHeld;
import boltlore.resolution.rules.Facts.PartCaution;
import boltlore.resolution.rules.Facts.PickWatched;
import boltlore.resolution.rules.Facts.PickedWhole;
import boltlore.resolution.rules.Facts.RoleFinish;
import boltlore.resolution.rules.Facts.TakesFinish;
import boltlore.resolution.rules.Facts.ToPick;
import java.util.List;

/** Rules for the coating shop, the stores and the cautions on the sheets. */
final class WorkshopCases {

    private static final InKit CRADLE_IN = new InKit(byPart("CR-E"));
    private static final Coated CRADLE_COATED = new Coated(byPart("CR-E"), part("CR-E"), "frame");
    private static final RoleFinish BLACK = new RoleFinish("frame", "black", true);
    private static final Reason LINE_BRINGS = new Reason(byLine("cradle"), Way.LINE, part("CR-E"));
    private static final Reason INSIDE = new Reason(byPart("BOX"), Way.CONTAINS, part("LUG"));
    private static final PickWatched CRADLE_WATCHED = new PickWatched(byPart("CR-E"), part("CR-E"));
    private static final PickedWhole NO_BIN = new PickedWhole(byPart("CR-E"), false);

    private WorkshopCases() {}

    static List<RuleCase> all() {
        return List.of(
                rule("A coated part takes the finish that the order chose for its role")
                        .given(CRADLE_COATED, CRADLE_IN, BLACK)
                        .concludes(new TakesFinish(part("CR-E"), "black"))
                        .butNotWhen(BLACK, new RoleFinish("bracket", "black", true)),
                rule("A coated part's bare thread, face or earth point needs its mask")
                        .given(new BareFeature(byPart("CR-E"), "thread M10"), CRADLE_IN, new MaskHeld("thread M8"))
                        .concludes(new Finding(FindingKind.NO_MASK, "CR-E", "thread M10"))
                        .butNotWhen(new MaskHeld("thread M8"), new MaskHeld("thread M10")),
                rule("A part's caution stands on each sheet that the workshop wants it on")
                        .given(
                                new PartCaution(byPart("CR-E"), "lift-two"),
                                new CautionStands("lift-two", "picking"),
                                CRADLE_IN)
                        .concludes(new CautionOn("picking", "lift-two"))
                        .butNotWithout(CRADLE_IN),
                rule("Curing in our own oven calls for the oven's caution")
                        .given(CRADLE_COATED, CRADLE_IN, new CautionStands("oven", "coating"), BLACK)
                        .concludes(new CautionOn("coating", "oven"))
                        .butNotWhen(BLACK, new RoleFinish("frame", "black", false)),
                rule("What a line or a need brings is picked")
                        .given(LINE_BRINGS, CRADLE_WATCHED)
                        .concludes(new ToPick(byPart("CR-E")))
                        .butNotWhen(LINE_BRINGS, new Reason(byPart("SET"), Way.CONTAINS, part("CR-E"))),
                rule("What an assembly contains is picked when the assembly is not picked whole")
                        .given(INSIDE, new ToPick(byPart("BOX")), new PickWatched(byPart("LUG"), part("LUG")))
                        .concludes(new ToPick(byPart("LUG")))
                        .butNotWith(new PickedWhole(byPart("BOX"), true)),
                rule("What is picked has a bin")
                        .given(NO_BIN, new ToPick(byPart("CR-E")))
                        .concludes(new Finding(FindingKind.LEAF_WITHOUT_BIN, "CR-E"))
                        .butNotWhen(NO_BIN, new PickedWhole(byPart("CR-E"), true)));
    }
}
