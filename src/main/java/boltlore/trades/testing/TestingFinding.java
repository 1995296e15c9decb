package boltlore.trades.testing;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.STOP;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What the tests of a kit may show, before and after they are made. */
public enum TestingFinding implements Kind {
    LIMIT_NOT_KNOWN(CHECK),
    TEST_FAILED(STOP),
    TEST_NOT_MADE(STOP),
    READING_NOT_JUDGED(STOP),
    TEST_WITHOUT_LIMIT(STOP),
    READING_OF_NO_TEST(STOP);

    private final Severity severity;

    TestingFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return TestTrade.NAME;
    }
}
