package boltlore.trades.testing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Judges one test by its readings: of each box the last one counts. */
final class RowJudge {

    private final TestRow row;
    private final String language;
    private final LocalDate today;
    private final List<Box> empty = new ArrayList<>();
    private final List<Flaw> flaws = new ArrayList<>();
    private final Map<Box.Quantity, ParsedReading> parsed = new EnumMap<>(Box.Quantity.class);

    RowJudge(TestRow row, String language, LocalDate today) {
        this.row = row;
        this.language = language;
        this.today = today;
    }

    /** @param readings of this row, those that count later behind */
    JudgedRow judged(List<Reading> readings) {
        row.boxes().forEach(box -> read(box, readings));
        if (flaws.isEmpty() && empty.isEmpty()) {
            oneDay();
        }
        return flaws.isEmpty() && empty.isEmpty() ? whole(readings) : new JudgedRow(row, readings, null, lacking());
    }

    private void read(Box box, List<Reading> readings) {
        List<Reading> own = readings.stream()
                .filter(reading -> reading.box().equals(box.key()))
                .toList();
        if (own.isEmpty()) {
            empty.add(box);
            return;
        }
        ReadingCheck check = new ReadingCheck(box, own.get(own.size() - 1), language, today);
        check.parsed().ifPresent(read -> parsed.put(box.quantity(), read));
        flaws.addAll(check.flaws());
    }

    private Judgement lacking() {
        return flaws.isEmpty()
                ? new Judgement.Missing(List.copyOf(empty))
                : new Judgement.Unreadable(List.copyOf(flaws));
    }

    /** A pack's voltages of another day say nothing about today's. */
    private void oneDay() {
        long days = parsed.values().stream().map(ParsedReading::on).distinct().count();
        if (days > 1) {
            flaws.add(new Flaw(Flaw.Kind.SEVERAL_DAYS, Long.toString(days), ""));
        }
    }

    private JudgedRow whole(List<Reading> readings) {
        if (row.limit() instanceof Limit.Unknown unknown) {
            return new JudgedRow(row, readings, null, new Judgement.NoLimit(unknown.what()));
        }
        if (row.limit() instanceof Limit.InState wanted) {
            boolean good = parsed.get(Box.Quantity.RESULT) instanceof ParsedReading.State found
                    && found.state() == wanted.state();
            return new JudgedRow(row, readings, null, good ? new Judgement.Passed() : failed(BigDecimal.ZERO));
        }
        BigDecimal result = result();
        return new JudgedRow(row, readings, result, result == null ? lacking() : judgement(result));
    }

    private Judgement judgement(BigDecimal result) {
        return row.limit().keeps(result)
                ? new Judgement.Passed()
                : failed(row.limit().missedBy(result));
    }

    private static Judgement failed(BigDecimal by) {
        return new Judgement.Failed(by);
    }

    private @Nullable BigDecimal result() {
        return row.workedOut() ? DerivedResult.result(row, this::number, flaws) : number(Box.Quantity.RESULT);
    }

    private BigDecimal number(Box.Quantity quantity) {
        return parsed.get(quantity) instanceof ParsedReading.Figured read ? read.number() : BigDecimal.ZERO;
    }
}
