package boltlore.faults;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known name that a misspelt one most likely stands for. */
public final class Nearest {

    private static final int SHORT = 4;

    private Nearest() {}

    /** The known name at the least edit distance, if it is near enough to be a likely slip. */
    public static Optional<String> to(String written, Collection<String> known) {
        String wanted = written.toLowerCase(Locale.ROOT);
        return find(written, known).filter(name -> distance(wanted, name.toLowerCase(Locale.ROOT)) <= reach(wanted));
    }

    /** The known name at the least edit distance, however far. */
    public static Optional<String> find(String written, Collection<String> known) {
        String wanted = written.toLowerCase(Locale.ROOT);
        return known.stream()
                .min(Comparator.<String>comparingInt(name -> distance(wanted, name.toLowerCase(Locale.ROOT)))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** The known name at the least edit distance, if that is no more than so many letters. */
    public static Optional<String> within(String written, Collection<String> known, int letters) {
        return find(written, known).filter(name -> distance(written, name) <= letters);
    }

    /** 'Did you mean …?' for the nearest known name, or the fallback. */
    public static String advice(String written, Collection<String> known, String fallback) {
        return to(written, known).map(name -> "Did you mean '" + name + "'?").orElse(fallback);
    }

    private static int reach(String written) {
        // A name of which half the letters are changed is no slip.
        return written.length() < SHORT ? written.length() / 2 : Math.max(2, written.length() / 3);
    }

    /**
     * Insertions, deletions and substitutions of one character, and exchanges of two that stand side by side, no character
     * touched twice (optimal string alignment).
     */
    static int distance(String left, String right) {
        int[] higher = new int[right.length() + 1];
        int[] above = new int[right.length() + 1];
        for (int j = 0; j <= right.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= left.length(); i++) {
            int[] row = new int[right.length() + 1];
            row[0] = i;
            for (int j = 1; j <= right.length(); j++) {
                int substitution = above[j - 1] + (left.charAt(i - 1) == right.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(substitution, 1 + Math.min(above[j], row[j - 1]));
                if (areExchanged(left, i, right, j)) {
                    row[j] = Math.min(row[j], higher[j - 2] + 1);
                }
            }
            higher = above;
            above = row;
        }
        return above[right.length()];
    }

    private static boolean areExchanged(String left, int i, String right, int j) {
        return i > 1 && j > 1 && left.charAt(i - 1) == right.charAt(j - 2) && left.charAt(i - 2) == right.charAt(j - 1);
    }
}
