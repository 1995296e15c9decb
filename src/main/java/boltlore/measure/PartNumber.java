package boltlore.measure;

import org.jspecify.annotations.Nullable;

/** One number, one meaning: the workshop's number of a part in every family. */
public record PartNumber(String text) implements Comparable<PartNumber> {
    // By hand, as for all names that are keys of maps: a record's own are linked anew each time the program starts.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PartNumber name && text.equals(name.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public int compareTo(PartNumber other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
