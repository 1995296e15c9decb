package boltlore.resolution.rules;

import static boltlore.resolution.rules.Named.byLine;
import static boltlore.resolution.rules.Named.line;
import static boltlore.resolution.rules.Named.position;
import static boltlore.resolution.rules.RuleCase.rule;

import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.rules.Facts.Carries;
import boltlore.resolution.rules.Facts.Filled;
import boltlore.resolution.rules.Facts.Held;
import boltlore.resolution.rules.Facts.HeldByOneOf;
import boltlore.resolution.rules.Facts.Holder;
import boltlore.resolution.rules.Facts.InKit;
import boltlore.resolution.rules.Facts.LineSelected;
import boltlore.resolution.rules.Facts.StaysOut;
import boltlore.resolution.rules.Facts.Unused;
import boltlore.resolution.rules.Facts.UnusedBrackets;
import boltlore.resolution.rules.Facts.Useful;
import java.util.List;

/** Rules about what carries what: a drive unit on its mount, the mount on its cradle. */
final class BracketCases {

    private static final LineSelected UNIT = new LineSelected(line("unit"), position("unit"), false);
    private static final LineSelected MOUNT = new LineSelected(line("mount"), position("mounts"), true);
    private static final Carries MOUNT_CARRIES = new Carries(line("mount"), position("unit"));
    private static final Carries CRADLE_CARRIES = new Carries(line("cradle"), position("mounts"));
    private static final Useful MOUNT_USEFUL = new Useful(line("mount"));
    private static final UnusedBrackets UNDECIDED = new UnusedBrackets(false);
    private static final UnusedBrackets DECIDED = new UnusedBrackets(true);
    private static final HeldByOneOf BOX_HELD = new HeldByOneOf(position("box"), 0, "bracket-a, bracket-b");
    private static final Filled BOX = new Filled(position("box"));

    private BracketCases() {}

    static List<RuleCase> all() {
        return List.of(
                rule("A bracket is useful when what it carries is called for")
                        .given(UNIT, MOUNT_CARRIES)
                        .concludes(MOUNT_USEFUL)
                        .butNotWhen(UNIT, new LineSelected(line("unit"), position("other"), false)),
                rule("A bracket is useful when what it carries is called for")
                        .given(UNIT, MOUNT_CARRIES)
                        .concludes(MOUNT_USEFUL)
                        .butNotWhen(UNIT, new LineSelected(line("unit"), position("unit"), true)),
                rule("A bracket is useful when a useful bracket stands on it")
                        .given(MOUNT, MOUNT_USEFUL, CRADLE_CARRIES)
                        .concludes(new Useful(line("cradle")))
                        .butNotWithout(MOUNT_USEFUL),
                rule("A bracket that carries nothing in this kit is unused")
                        .given(MOUNT)
                        .concludes(new Unused(line("mount")))
                        .butNotWith(MOUNT_USEFUL),
                rule("A bracket that carries nothing in this kit is unused")
                        .given(MOUNT)
                        .concludes(new Unused(line("mount")))
                        .butNotWith(new StaysOut(line("mount"))),
                rule("A bracket that carries nothing in this kit is unused")
                        .given(MOUNT)
                        .concludes(new Unused(line("mount")))
                        .butNotWhen(MOUNT, new LineSelected(line("mount"), position("mounts"), false)),
                rule("An unused bracket waits for a decision")
                        .given(new Unused(line("mount")), UNDECIDED)
                        .concludes(new Finding(FindingKind.UNUSED, "mount"))
                        .butNotWhen(UNDECIDED, DECIDED),
                rule("An unused bracket is kept on purpose")
                        .given(new Unused(line("mount")), DECIDED)
                        .concludes(new Finding(FindingKind.KEPT, "mount"))
                        .butNotWhen(DECIDED, UNDECIDED),
                rule("A bracket is left out as the order says")
                        .given(new StaysOut(line("mount")), MOUNT)
                        .concludes(new Finding(FindingKind.LEFT_OUT, "mount"))
                        .butNotWithout(MOUNT),
                rule("A bracket of the list holds the position")
                        .given(new Holder(position("box"), 0, byLine("bracket-a")), new InKit(byLine("bracket-a")))
                        .concludes(new Held(position("box"), 0))
                        .butNotWhen(new InKit(byLine("bracket-a")), new InKit(byLine("bracket-c"))),
                rule("What is fitted is held by its bracket")
                        .given(BOX_HELD, BOX, new Held(position("box"), 1))
                        .concludes(new Finding(FindingKind.BRACKET_MISSING, "box", "bracket-a, bracket-b"))
                        .butNotWith(new Held(position("box"), 0)),
                rule("What is fitted is held by its bracket")
                        .given(BOX_HELD, BOX)
                        .concludes(new Finding(FindingKind.BRACKET_MISSING, "box", "bracket-a, bracket-b"))
                        .butNotWithout(BOX));
    }
}
