package boltlore.measure;

/** The name of a place in the kit, unique in its family. */
public record PositionName(String text) implements Comparable<PositionName> {
    @Override
    public int compareTo(PositionName other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
