package boltlore.desk;

import boltlore.trades.KitInWork;
import boltlore.trades.testing.Box;
import boltlore.trades.testing.Limit;
import boltlore.trades.testing.TestPlan;
import boltlore.trades.testing.TestPlanner;
import boltlore.trades.testing.TestRow;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is read at the bench of a vehicle that is in order, by the box that it is typed into. */
final class FilledAtBench {

    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final BigDecimal TENTH = new BigDecimal("0.1");

    private FilledAtBench() {}

    static Map<String, String> of(KitInWork kit) {
        TestPlan plan = TestPlanner.plan(kit.catalogue(), kit.bill());
        Map<String, String> values = new LinkedHashMap<>();
        plan.rows().toList().forEach(row -> values.putAll(of(row)));
        return values;
    }

    /** An isolation test is worked out from six readings, a discharge from two; the others are read as they are. */
    private static Map<String, String> of(TestRow row) {
        List<String> boxes = row.boxes().stream().map(Box::key).toList();
        String key = row.key();
        if (boxes.size() == 6) {
            return Map.of(
                    key + ".vb",
                    "350",
                    key + ".v1",
                    "200",
                    key + ".v2",
                    "145",
                    key + ".v1-ro",
                    "90",
                    key + ".meter",
                    "11",
                    key + ".ro",
                    row.suitedOhm() == null
                            ? "175"
                            : row.suitedOhm().movePointLeft(3).toPlainString());
        }
        return boxes.size() == 2
                ? Map.of(key + ".vb", "350", key + ".link", "341")
                : Map.of(boxes.get(0), good(row.limit()));
    }

    private static String good(Limit limit) {
        if (limit instanceof Limit.InState state) {
            return state.state().written();
        }
        BigDecimal least = limit.leastNumber();
        BigDecimal most = limit.mostNumber();
        if (least != null && most != null) {
            return least.add(most)
                    .multiply(HALF)
                    .setScale(2, RoundingMode.HALF_UP)
                    .toPlainString();
        }
        BigDecimal bound = least == null ? most : least;
        BigDecimal away = bound.abs().multiply(TENTH);
        return (least == null ? bound.subtract(away) : bound.add(away)).toPlainString();
    }
}
