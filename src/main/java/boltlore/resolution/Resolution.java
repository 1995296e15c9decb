package boltlore.resolution;

import boltlore.catalogue.Limit;
import boltlore.choices.Choices;
import boltlore.findings.Severity;
import boltlore.measure.OptionName;
import java.util.List;
import java.util.SortedSet;

/** What becomes of an order's choices. */
public sealed interface Resolution {

    Choices choices();

    SortedSet<Finding> findings();

    /** The same with these findings instead. */
    Resolution withFindings(SortedSet<Finding> other);

    default boolean stops() {
        return findings().stream().anyMatch(finding -> finding.severity() == Severity.STOP);
    }

    /** Every option is settled and no limit is broken: a kit, whose findings may still stop its sheets. */
    record Resolved(Choices choices, Kit kit, SortedSet<Finding> findings) implements Resolution {
        @Override
        public Resolution withFindings(SortedSet<Finding> other) {
            return new Resolved(choices, kit, other);
        }
    }

    /** The choices break these limits, in the family's order. */
    record Contradicted(Choices choices, List<Limit> broken, SortedSet<Finding> findings) implements Resolution {
        @Override
        public Resolution withFindings(SortedSet<Finding> other) {
            return new Contradicted(choices, broken, other);
        }
    }

    /** No limit is broken so far, but these options have no value yet, in the family's order. */
    record Incomplete(Choices choices, List<OptionName> open, SortedSet<Finding> findings) implements Resolution {
        @Override
        public Resolution withFindings(SortedSet<Finding> other) {
            return new Incomplete(choices, open, other);
        }
    }
}
