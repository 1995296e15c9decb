package boltlore.cli;

import boltlore.json.JsonOut;
import boltlore.trades.testing.JudgedRow;
import boltlore.trades.testing.Reading;
import boltlore.trades.testing.Verdict;
import boltlore.trades.testing.sheets.TestWords;
import boltlore.trades.testing.sheets.VerdictWords;
import java.nio.file.Path;
import java.util.List;

/** Verdicts for programs. */
final class TestVerdictAnswer {

    private static final VerdictWords WORDS = new VerdictWords(TestWords.in("en"));

    private TestVerdictAnswer() {}

    static String json(List<Verdict> verdicts, List<Path> written) {
        return OrdersAnswer.json(verdicts, written, TestVerdictAnswer::order);
    }

    private static JsonOut order(Verdict verdict) {
        return JsonOut.object()
                .put("order", verdict.plan().order())
                .put("catalogue", verdict.plan().revision())
                .put("passed", verdict.passed())
                .put("tests", JsonOut.list(verdict.rows(), TestVerdictAnswer::row))
                .put("notOfThisKit", JsonOut.list(verdict.strangers(), TestVerdictAnswer::reading));
    }

    private static JsonOut row(JudgedRow judged) {
        return JsonOut.object()
                .put("test", judged.row().key())
                .put("verdict", WORDS.verdict(judged.judgement()))
                .put("limit", WORDS.limit(judged.row()))
                .putIfAny("unit", judged.row().unit())
                .putIfAny("result", judged.result())
                .putIfAny("why", WORDS.why(judged))
                .put("readings", JsonOut.list(judged.readings(), TestVerdictAnswer::reading));
    }

    private static JsonOut reading(Reading reading) {
        return JsonOut.object()
                .put("box", reading.box())
                .put("value", reading.value())
                .putIfAny("unit", reading.unit())
                .putIfAny("instrument", reading.instrument())
                .putIfAny("by", reading.by())
                .putIfAny("on", reading.on());
    }
}
