package boltlore.cli;

import boltlore.trades.testing.JudgedRow;
import boltlore.trades.testing.Reading;
import boltlore.trades.testing.Verdict;
import boltlore.trades.testing.sheets.TestWords;
import boltlore.trades.testing.sheets.VerdictWords;

/** A verdict for the terminal: what did not pass, and why. */
final class TestVerdictText {

    private static final VerdictWords WORDS = new VerdictWords(TestWords.in("en"));

    private TestVerdictText() {}

    static void print(Screen screen, Verdict verdict) {
        screen.heading(verdict.plan().order() + ": " + WORDS.headline(verdict));
        verdict.open().forEach(row -> screen.wrapped(2, says(row)));
        verdict.strangers().forEach(reading -> screen.wrapped(2, stranger(reading)));
    }

    private static String says(JudgedRow judged) {
        String found = WORDS.found(judged).isEmpty() ? "" : WORDS.found(judged) + ", ";
        String why = WORDS.why(judged).isEmpty() ? "" : "; " + WORDS.why(judged);
        return WORDS.verdict(judged.judgement()) + ": " + WORDS.tested(judged.row()) + ": " + found + "limit "
                + WORDS.limit(judged.row()) + why;
    }

    private static String stranger(Reading reading) {
        return "not of this kit: " + reading.box() + " is filled in with " + reading.value() + " (" + reading.file()
                + ", line " + reading.line() + ")";
    }
}
