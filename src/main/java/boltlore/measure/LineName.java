package boltlore.measure;

/** The name of a line, unique in its family. */
public record LineName(String text) implements Comparable<LineName> {
    @Override
    public int compareTo(LineName other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
