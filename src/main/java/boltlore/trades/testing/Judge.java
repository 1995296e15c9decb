package boltlore.trades.testing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Holds the readings of one kit against its plan. */
public final class Judge {

    /** Later days count more; within a day what comes later in the files; a day that cannot be read counts as last. */
    private static final Comparator<Reading> AS_THEY_COUNT =
            Comparator.comparing(reading -> ReadingCheck.day(reading.on()).orElse(LocalDate.MAX));

    private Judge() {}

    /**
     * The verdict on one kit.
     *
     * @param readings of that order's kit, in the order of the files; empty boxes may be among them
     * @param today no reading is of a later day
     */
    public static Verdict judge(TestPlan plan, List<Reading> readings, LocalDate today) {
        List<Reading> filled = readings.stream()
                .filter(reading -> !reading.value().isBlank())
                .sorted(AS_THEY_COUNT)
                .toList();
        Set<String> known = plan.boxes().map(Box::key).collect(Collectors.toSet());
        List<JudgedRow> rows = new ArrayList<>();
        plan.rows().forEach(row -> rows.add(judged(row, filled, plan, today)));
        return new Verdict(
                plan,
                rows,
                filled.stream()
                        .filter(reading -> !known.contains(reading.box()))
                        .toList());
    }

    private static JudgedRow judged(TestRow row, List<Reading> filled, TestPlan plan, LocalDate today) {
        Set<String> own = row.boxes().stream().map(Box::key).collect(Collectors.toSet());
        List<Reading> readings =
                filled.stream().filter(reading -> own.contains(reading.box())).toList();
        return new RowJudge(row, plan.bill().order().language(), today).judged(readings);
    }
}
