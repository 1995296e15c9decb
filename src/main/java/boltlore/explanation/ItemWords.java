package boltlore.explanation;

import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.measure.LineName;
import boltlore.resolution.Requirer;
import java.util.Map;
import java.util.stream.Collectors;

/** Says what called for an item of the bill. */
public final class ItemWords {

    private final Map<LineName, Condition> whens;
    private final ConditionWords conditions;
    private final Family family;
    private final String language;

    /** @param language of the names and of what joins them */
    public ItemWords(Family family, String language) {
        this.whens = family.lines().collect(Collectors.toMap(Line::name, Line::when));
        this.family = family;
        this.conditions = new ConditionWords(family, language);
        this.language = language;
    }

    /** 'Left-hand drive'; 'every kit'; 'in BX-1'; 'with Drive unit: …'. */
    public String calledBy(Item item) {
        if (item.origin() instanceof Origin.Inside inside) {
            return "in " + inside.assembly();
        }
        if (item.origin() instanceof Origin.NeededBy needed) {
            return "with " + asker(needed.asker()) + because(needed.because());
        }
        if (item.origin() instanceof Origin.AtJoint joint) {
            return "joint " + joint.joint() + because(joint.because());
        }
        Condition when = whens.get(item.line());
        return when == null ? "" : conditions.of(when);
    }

    /** What stands at the line's position, in its words; a part by its number. */
    private String asker(Requirer asker) {
        return asker instanceof Requirer.OfLine of
                ? family.positions().stream()
                        .filter(position -> position.lines().stream()
                                .anyMatch(line -> line.name().equals(of.line())))
                        .map(position -> position.says().in(language))
                        .findFirst()
                        .orElse(asker.name())
                : asker.name();
    }

    private static String because(String reason) {
        return reason.isEmpty() ? "" : ": " + reason;
    }
}
