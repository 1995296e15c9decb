package boltlore.measure;

import org.jspecify.annotations.Nullable;

/** The name of an option, unique in its family. */
public record OptionName(String text) implements Comparable<OptionName> {
    // By hand, as for all names that are keys of maps: a record's own are linked anew each time the program starts.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof OptionName name && text.equals(name.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public int compareTo(OptionName other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
