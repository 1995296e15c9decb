package boltlore.resolution;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Limit;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.faults.Outcome;
import boltlore.order.LeftOut;
import java.util.List;

/** Resolves settled choices of one catalogue into kits. */
public interface Resolver {

    Catalogue catalogue();

    FamilyPlan plan(String family);

    /** Faulty only where the order leaves out lines that are not unused brackets of its kit. */
    Outcome<Resolution> resolve(Choices choices, LeftOut leftOut);

    /** Limits that these choices break whatever is chosen beside them, in the family's order. */
    static List<Limit> brokenLimits(Choices choices) {
        return choices.family().limits().stream()
                .filter(limit -> Conditions.certain(limit.forbids(), choices))
                .toList();
    }
}
