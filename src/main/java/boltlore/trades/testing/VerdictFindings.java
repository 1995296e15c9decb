package boltlore.trades.testing;

import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.measure.Wording;
import java.util.function.Function;
import java.util.stream.Stream;

/** What keeps a vehicle from passing: each test that did not, and readings that belong to none. */
final class VerdictFindings {

    private VerdictFindings() {}

    static Findings find(Verdict verdict) {
        return Stream.concat(
                        verdict.open().map(VerdictFindings::open),
                        verdict.strangers().stream().map(VerdictFindings::stranger))
                .collect(Findings.collected());
    }

    private static Finding open(JudgedRow judged) {
        Judgement judgement = judged.judgement();
        TestingFinding kind = TestingFinding.TEST_WITHOUT_LIMIT;
        if (judgement instanceof Judgement.Failed) {
            kind = TestingFinding.TEST_FAILED;
        } else if (judgement instanceof Judgement.Missing) {
            kind = TestingFinding.TEST_NOT_MADE;
        } else if (judgement instanceof Judgement.Unreadable) {
            kind = TestingFinding.READING_NOT_JUDGED;
        }
        return Finding.of(
                kind,
                judged.row().key(),
                "tested",
                says(words -> words.tested(judged.row())),
                "limit",
                says(words -> words.limit(judged.row())),
                "found",
                says(words -> words.found(judged)),
                "missing",
                says(words -> words.missing(judged)),
                "why",
                says(words -> words.why(judged)));
    }

    private static Finding stranger(Reading reading) {
        return Finding.of(
                TestingFinding.READING_OF_NO_TEST,
                reading.box(),
                "box",
                reading.box(),
                "value",
                (reading.value() + " " + reading.unit()).strip(),
                "by",
                reading.by(),
                "on",
                reading.on(),
                "file",
                reading.file(),
                "line",
                reading.line());
    }

    private static Wording says(Function<VerdictWords, String> says) {
        return TestWords.each(words -> says.apply(new VerdictWords(words)));
    }
}
