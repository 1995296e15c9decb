package boltlore.trades.coating.written;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.FilmReading;
import boltlore.trades.coating.PowderIssued;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the coating shop wrote down.
 *
 * @param filmRead whether it is a record of film, though nothing may be filled in
 * @param film a line for each piece that it names, filled in or not
 */
public record ShopRecord(boolean filmRead, List<FilmReading> film, List<PowderIssued> issued) {

    /** Reads the files, each CSV or JSON, and holds them against the plan; faults name file, line and place. */
    public static Outcome<ShopRecord> read(List<Path> files, CoatPlan plan) {
        Entries all = Entries.NONE;
        List<Fault> faults = new ArrayList<>();
        Map<Path, ShopRecord> read = new LinkedHashMap<>();
        for (Path file : files) {
            Outcome<Entries> entries = RecordFile.read(file);
            faults.addAll(entries.faults());
            if (entries instanceof Outcome.Sound<Entries> sound) {
                Path same = sameAs(of(sound.value()), read);
                if (same == null) {
                    read.put(file, of(sound.value()));
                    all = all.and(sound.value());
                } else {
                    faults.add(Fault.of(
                            file.toString(),
                            "the same entries as in " + same,
                            "each record once",
                            "Give one of the two; where pieces were read again, their lines say so under 'coating' or"
                                    + " 'on'."));
                }
            }
        }
        if (faults.isEmpty() && !all.isFilled()) {
            files.forEach(file -> faults.add(Fault.of(
                    file.toString(),
                    "nothing filled in",
                    "film readings, or powder that was issued",
                    "Fill it in first.")));
        }
        faults.addAll(new RecordCheck(plan).faults(all));
        return faults.isEmpty() ? Outcome.sound(of(all)) : Outcome.faulty(faults);
    }

    /** A table in CSV that was written just now, as the batch sheet's, held against the plan. */
    public static Outcome<ShopRecord> read(String name, byte[] csv, CoatPlan plan) {
        return RecordCsv.read(name, csv).then(entries -> {
            List<Fault> faults = new RecordCheck(plan).faults(entries);
            return faults.isEmpty() ? Outcome.sound(of(entries)) : Outcome.faulty(faults);
        });
    }

    /** The file read before that has the same in it; null where none has, or nothing is filled in. */
    private static @Nullable Path sameAs(ShopRecord record, Map<Path, ShopRecord> read) {
        boolean filled = !record.issued().isEmpty() || record.film().stream().anyMatch(FilmReading::isFilled);
        return read.entrySet().stream()
                .filter(other -> filled && other.getValue().equals(record))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(null);
    }

    private static ShopRecord of(Entries entries) {
        return new ShopRecord(
                entries.filmRead(),
                entries.film().stream().map(Written::value).toList(),
                entries.issued().stream().map(Written::value).toList());
    }
}
