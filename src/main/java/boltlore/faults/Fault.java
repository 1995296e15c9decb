package boltlore.faults;

import java.util.Comparator;

/**
 * One thing that is wrong with an input, said so that the reader can mend it.
 *
 * @param file the file as the user named it, or empty
 * @param line line in the file from 1, or 0 where there is none
 * @param place JSON pointer (RFC 6901), cell address or other place inside the file, or empty
 * @param found what stands there
 * @param expected what is allowed there
 * @param advice what to do, with the nearest known name where there is one; may be empty
 */
public record Fault(String file, int line, String place, String found, String expected, String advice)
        implements Comparable<Fault> {

    private static final Comparator<Fault> BY_PLACE = Comparator.comparing(Fault::file)
            .thenComparingInt(Fault::line)
            .thenComparing(Fault::place)
            .thenComparing(Fault::found)
            .thenComparing(Fault::expected)
            .thenComparing(Fault::advice);

    /** A fault of a whole file or folder. */
    public static Fault of(String file, String found, String expected, String advice) {
        return new Fault(file, 0, "", found, expected, advice);
    }

    /** The same with a sentence more of what to do. */
    public Fault advising(String more) {
        return new Fault(file, line, place, found, expected, (advice + " " + more).strip());
    }

    /** The same of a text that nobody can look up: without file, line and place. */
    public Fault withoutPlace() {
        return of("", found, expected, advice);
    }

    @Override
    public int compareTo(Fault other) {
        return BY_PLACE.compare(this, other);
    }
}
