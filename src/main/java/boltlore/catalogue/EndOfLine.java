package boltlore.catalogue;

import java.util.List;
import java.util.Map;

/**
 * What is tested of a family's finished kits, with which instruments, and the labels and manual sections that go with
 * them. Lists keep the order of the file.
 */
public record EndOfLine(
        Map<String, Instrument> instruments, List<TestGroup> groups, List<Label> labels, List<ManualSection> sections) {

    /** Of a family that says nothing about tests. */
    public static final EndOfLine NONE = new EndOfLine(Map.of(), List.of(), List.of(), List.of());

    /** The instrument of that name; every name inside a checked catalogue is known. */
    public Instrument instrument(String name) {
        Instrument instrument = instruments.get(name);
        if (instrument == null) {
            throw new IllegalArgumentException("No instrument " + name);
        }
        return instrument;
    }
}
