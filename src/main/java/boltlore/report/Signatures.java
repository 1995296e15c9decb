package boltlore.report;

import java.util.List;

/**
 * Lines to sign on, each with a place for the date.
 *
 * @param lines what the signer stands for: 'Picked by', 'Second count by'
 * @param dateWord 'Date' in the sheet's language
 */
public record Signatures(List<String> lines, String dateWord) implements Block {

    public Signatures {
        lines = List.copyOf(lines);
    }

    public Signatures(List<String> lines) {
        this(lines, "Date");
    }

    @Override
    public <R> R as(Cases<R> cases) {
        return cases.signatures(this);
    }
}
