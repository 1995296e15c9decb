package boltlore.checking;

import java.util.Comparator;

/**
 * One thing in a catalogue that is doubtful: it reads soundly, but a real kit is seldom so.
 *
 * @param about what it is about, with its kind before its name: 'part BR-1', 'line van/heater'
 * @param found what stands in the catalogue
 * @param expected what would be consistent
 * @param advice what to look at
 */
public record Remark(String about, Check check, String found, String expected, String advice)
        implements Comparable<Remark> {

    private static final Comparator<Remark> BY_SUBJECT = Comparator.comparing(Remark::about)
            .thenComparing(Remark::check)
            .thenComparing(Remark::found)
            .thenComparing(Remark::expected)
            .thenComparing(Remark::advice);

    /** In one sentence with its advice, as a person reads it. */
    public String says() {
        return about + ": found " + found + "; expected " + expected + ". " + advice + ".";
    }

    @Override
    public int compareTo(Remark other) {
        return BY_SUBJECT.compare(this, other);
    }
}
