package boltlore.trades.testing.sheets;

import boltlore.trades.testing.TestRow;
import boltlore.trades.testing.TestedAt;

/** Where a test is made, with the part that stands there. */
final class Places {

    private Places() {}

    /** 'Junction box (HV-JB1)'. */
    static String of(TestRow row, TestWords words) {
        TestedAt at = row.at();
        return at == null ? words.where(row) : of(at, words);
    }

    static String of(TestedAt at, TestWords words) {
        return words.where(at) + " (" + at.part().number() + ")";
    }
}
