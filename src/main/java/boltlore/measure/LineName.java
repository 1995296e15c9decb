package boltlore.measure;

import org.jspecify.annotations.Nullable;

/** The name of a line, unique in its family. */
public record LineName(String text) implements Comparable<LineName> {
    // By hand, as for all names that are keys of maps: a record's own are linked anew each time the program starts.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LineName name && text.equals(name.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public int compareTo(LineName other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
