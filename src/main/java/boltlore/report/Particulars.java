package boltlore.report;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Named values at the head of a page: order, customer, date.
 *
 * @param name unique on the page, letters, digits and hyphens, stable: formulas and readers of the JSON go by it
 */
public record Particulars(String name, List<Particular> entries) implements Block {

    /** Where a formula finds a particular's value: the particular's key is the row. */
    public static final String VALUE = "value";

    public Particulars {
        entries = List.copyOf(entries);
        Set<String> keys = new HashSet<>();
        for (Particular entry : entries) {
            if (!keys.add(entry.key())) {
                throw new IllegalArgumentException("Particulars '" + name + "' say '" + entry.key() + "' twice");
            }
        }
    }

    public static ParticularsBuilder named(String name) {
        return new ParticularsBuilder(name);
    }

    @Override
    public <R> R as(Cases<R> cases) {
        return cases.particulars(this);
    }
}
