package boltlore.cli;

import boltlore.json.JsonOut;
import boltlore.trades.testing.Box;
import boltlore.trades.testing.KitSection;
import boltlore.trades.testing.PlacedLabel;
import boltlore.trades.testing.TestRow;
import boltlore.trades.testing.TestedAt;
import boltlore.trades.testing.sheets.TestWords;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Test plans for programs. */
final class TestAnswer {

    private static final TestWords WORDS = TestWords.in("en");

    private TestAnswer() {}

    static String json(List<TestedOrder> tested, List<Path> written) {
        return OrdersAnswer.json(tested, written, TestAnswer::order);
    }

    private static JsonOut order(TestedOrder order) {
        return JsonOut.object()
                .put("order", order.name())
                .put("catalogue", order.plan().revision())
                .put("tests", JsonOut.list(order.plan().rows().toList(), TestAnswer::row))
                .put("labels", JsonOut.list(order.plan().labels(), TestAnswer::label))
                .put("sections", JsonOut.list(order.plan().sections(), TestAnswer::section));
    }

    private static JsonOut row(TestRow row) {
        JsonOut.Members answer = JsonOut.object()
                .put("test", row.key())
                .put("group", row.group().name())
                .put("says", row.test().says().english());
        return at(answer, row.at())
                .put("limit", WORDS.limit(row))
                .putIfAny("unit", row.unit())
                .putIfAny("basis", row.basis())
                .putIfAny(
                        "resistorKohm",
                        row.suitedOhm() == null ? null : row.suitedOhm().movePointLeft(3))
                .put("boxes", JsonOut.texts(row.boxes().stream().map(Box::key).toList()));
    }

    private static JsonOut.Members at(JsonOut.Members answer, @Nullable TestedAt at) {
        return at == null
                ? answer
                : answer.put("position", at.position().name().text())
                        .put("part", at.part().number().text());
    }

    private static JsonOut label(PlacedLabel label) {
        JsonOut.Members answer = JsonOut.object().put("label", label.label().name());
        return at(answer, label.at())
                .put("from", label.part().number().text())
                .putIfAny("mark", label.label().mark());
    }

    private static JsonOut section(KitSection section) {
        return JsonOut.object()
                .put("section", section.section().number())
                .put("says", section.section().says().english())
                .put("manual", section.manual().number().text());
    }
}
