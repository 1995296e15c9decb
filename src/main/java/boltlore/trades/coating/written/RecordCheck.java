package boltlore.trades.coating.written;

import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.trades.coating.BatchRow;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.FilmReading;
import boltlore.trades.coating.OvenBatch;
import boltlore.trades.coating.PieceMarks;
import boltlore.trades.coating.PowderIssued;
import boltlore.trades.coating.PowderRun;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Entries against the plan: the batch, part, piece and run that they name are there, and none is entered twice. */
final class RecordCheck {

    private record Key(int batch, String part, String piece) {}

    private final CoatPlan plan;
    private final List<Fault> faults = new ArrayList<>();
    private final Set<Key> pieces = new HashSet<>();
    private final Map<Key, Integer> readOfPart = new HashMap<>();
    private final Set<Integer> runs = new HashSet<>();

    RecordCheck(CoatPlan plan) {
        this.plan = plan;
    }

    List<Fault> faults(Entries entries) {
        entries.film().forEach(this::film);
        entries.issued().forEach(this::issued);
        return faults;
    }

    private void film(Written<FilmReading> written) {
        FilmReading reading = written.value();
        plan.batches().stream()
                .filter(batch ->
                        batch.number() == reading.batch() && !batch.rows().isEmpty())
                .findFirst()
                .ifPresentOrElse(batch -> part(written, batch), () -> unknownBatch(written));
    }

    private void unknownBatch(Written<FilmReading> written) {
        String known = plan.batches().stream()
                .map(batch -> batch.number() + " (" + batch.finish().says().english() + ")")
                .collect(Collectors.joining(", "));
        faults.add(written.fault(
                "batch " + written.value().batch(),
                "a batch of our own ovens in the plan of these orders",
                known.isEmpty() ? "There is none." : "Known: " + known + "."));
    }

    private void part(Written<FilmReading> written, OvenBatch batch) {
        List<BatchRow> rows = batch.rows().stream()
                .filter(row -> number(row).equals(written.value().part()))
                .toList();
        if (rows.isEmpty()) {
            unknownPart(written, batch);
        } else if (written.value().piece().isEmpty()) {
            unmarked(written, rows);
        } else {
            piece(written, rows);
        }
    }

    private static String number(BatchRow row) {
        return row.part().number().text();
    }

    private void unknownPart(Written<FilmReading> written, OvenBatch batch) {
        String part = written.value().part();
        List<String> known = batch.rows().stream().map(RecordCheck::number).toList();
        String advice = Nearest.advice(part, known, "Known: " + String.join(", ", known) + ".");
        faults.add(written.fault("part '" + part + "'", "a part of batch " + batch.number(), advice));
    }

    /** Readings without a mark are at most as many as there are pieces. */
    private void unmarked(Written<FilmReading> written, List<BatchRow> rows) {
        FilmReading reading = written.value();
        int there = rows.stream().mapToInt(BatchRow::pieces).sum();
        int read = readOfPart.merge(new Key(reading.batch(), reading.part(), ""), 1, Integer::sum);
        if (read > there) {
            faults.add(written.fault(
                    "a reading of piece number " + read + " of " + reading.part(),
                    "at most " + there + ", as many as batch " + reading.batch() + " has",
                    ""));
        }
    }

    private void piece(Written<FilmReading> written, List<BatchRow> rows) {
        FilmReading reading = written.value();
        List<PieceMarks> there =
                rows.stream().flatMap(row -> row.marks().stream()).toList();
        String found = "piece '" + reading.piece() + "'";
        if (there.stream().noneMatch(marks -> holds(marks, reading.piece()))) {
            String known = there.stream().map(PieceMarks::written).collect(Collectors.joining(", "));
            String expected = "a piece of " + reading.part() + " in batch " + reading.batch();
            faults.add(written.fault(found, expected, "Known: " + known + "."));
        } else if (!pieces.add(new Key(reading.batch(), reading.part(), reading.piece()))) {
            faults.add(written.fault(found + " of " + reading.part() + " a second time", "each piece once", ""));
        }
    }

    private static boolean holds(PieceMarks marks, String piece) {
        for (int number = marks.from(); number <= marks.to(); number++) {
            if (piece.equals(marks.order() + " " + number)) {
                return true;
            }
        }
        return false;
    }

    private void issued(Written<PowderIssued> written) {
        int run = written.value().run();
        if (plan.runs().stream().map(PowderRun::number).noneMatch(number -> number == run)) {
            faults.add(
                    written.fault("run " + run, "a run from 1 to " + plan.runs().size(), ""));
        } else if (!runs.add(run)) {
            faults.add(written.fault("run " + run + " a second time", "each run once", "Add the two up."));
        }
    }
}
