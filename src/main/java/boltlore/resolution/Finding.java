package boltlore.resolution;

import boltlore.findings.Severity;
import java.util.Comparator;

/**
 * Something that a person must look at.
 *
 * @param subject name of the line, position, part, pair, limit or value it is about
 * @param detail names that make it exact (the two lines of an overlap, the asker of a companion); may be empty
 */
public record Finding(FindingKind kind, String subject, String detail) implements Comparable<Finding> {

    private static final Comparator<Finding> BY_WEIGHT =
            Comparator.comparing(Finding::kind).thenComparing(Finding::subject).thenComparing(Finding::detail);

    public Finding(FindingKind kind, String subject) {
        this(kind, subject, "");
    }

    public Severity severity() {
        return kind.severity();
    }

    @Override
    public int compareTo(Finding other) {
        return BY_WEIGHT.compare(this, other);
    }
}
