package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.trades.testing.sheets.EmptyRecord;
import boltlore.trades.testing.written.TestRecord;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Records in a folder of sheets that somebody has begun to fill in. */
final class FilledRecords {

    private FilledRecords() {}

    /** Faulty where writing the folder anew would lose readings. */
    static Outcome<Path> none(Path folder) {
        List<Fault> faults = Stream.of(EmptyRecord.CSV, EmptyRecord.JSON)
                .map(folder::resolve)
                .filter(Files::isRegularFile)
                .filter(FilledRecords::filled)
                .map(file -> Fault.of(
                        file.toString(),
                        "a record that is filled in, or cannot be read",
                        "an empty record",
                        "Move it away, or name another folder with --out."))
                .toList();
        return faults.isEmpty() ? Outcome.sound(folder) : Outcome.faulty(faults);
    }

    /** What cannot be read may hold readings. */
    private static boolean filled(Path file) {
        return !(TestRecord.read(file) instanceof Outcome.Sound<List<TestRecord>> sound)
                || sound.value().stream()
                        .flatMap(record -> record.readings().stream())
                        .anyMatch(reading -> !reading.value().isBlank());
    }
}
