package boltlore.measure;

/** One number, one meaning: the workshop's number of a part in every family. */
public record PartNumber(String text) implements Comparable<PartNumber> {
    @Override
    public int compareTo(PartNumber other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
