package boltlore.trades.coating.written;

import boltlore.faults.Fault;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.FilmReading;
import boltlore.trades.coating.PowderIssued;
import boltlore.trades.coating.PowderRun;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Nothing is entered twice, and a run that is named by its number alone is in the plan. */
final class RecordCheck {

    private record Key(String piece, int coating, @Nullable LocalDate on) {}

    private final CoatPlan plan;
    private final List<Fault> faults = new ArrayList<>();
    private final Set<Key> pieces = new HashSet<>();
    private final Set<String> runs = new HashSet<>();

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
        if (reading.isFilled() && !pieces.add(new Key(reading.which(), reading.coating(), reading.on()))) {
            faults.add(written.fault(
                    "piece '" + reading.piece() + "' of " + reading.part() + " a second time",
                    "each piece once, or once for each coating and day",
                    "Where it was coated again write 2 under 'coating'; where it was only read again give both readings"
                            + " their day under 'on'."));
        }
    }

    private void issued(Written<PowderIssued> written) {
        int run = written.value().run();
        String code = written.value().code();
        if (code.isEmpty() && plan.runs().stream().map(PowderRun::number).noneMatch(number -> number == run)) {
            faults.add(
                    written.fault("run " + run, "a run from 1 to " + plan.runs().size(), ""));
        } else if (!runs.add(code.isEmpty() ? String.valueOf(run) : code)) {
            faults.add(written.fault("run " + run + " a second time", "each run once", "Add the two up."));
        }
    }
}
