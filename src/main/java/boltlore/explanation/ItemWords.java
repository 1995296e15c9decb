package boltlore.explanation;

import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;

/** Says what called for an item of the bill. */
public final class ItemWords {

    private final Family family;
    private final ConditionWords conditions;

    public ItemWords(Family family) {
        this.family = family;
        this.conditions = new ConditionWords(family);
    }

    /** 'Left-hand drive'; 'every kit'; 'in BX-1'; 'with CO-1: …'. */
    public String calledBy(Item item) {
        if (item.origin() instanceof Origin.Inside inside) {
            return "in " + inside.assembly();
        }
        if (item.origin() instanceof Origin.NeededBy needed) {
            return "with " + needed.asker().name() + because(needed.because());
        }
        if (item.origin() instanceof Origin.AtJoint joint) {
            return "joint " + joint.joint() + because(joint.because());
        }
        return family.line(item.line()).map(Line::when).map(conditions::of).orElse("");
    }

    private static String because(String reason) {
        return reason.isEmpty() ? "" : ": " + reason;
    }
}
