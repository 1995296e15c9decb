package boltlore.measure;

/** The name of an option, unique in its family. */
public record OptionName(String text) implements Comparable<OptionName> {
    @Override
    public int compareTo(OptionName other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
