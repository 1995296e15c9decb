package boltlore.trades.testing;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** One file of readings: JSON where its name says so, else CSV. */
final class RecordFile {

    private RecordFile() {}

    static Outcome<List<TestRecord>> read(Path file) {
        String name = file.toString();
        Outcome<byte[]> bytes = JsonFile.bytes(file);
        if (name.toLowerCase(Locale.ROOT).endsWith(".json")) {
            return bytes.then(read -> RecordJson.read(name, read));
        }
        return bytes instanceof Outcome.Sound<byte[]> sound
                ? RecordCsv.read(name, sound.value())
                : Outcome.faulty(bytes.faults().stream().map(RecordFile::ofCsv).toList());
    }

    private static Fault ofCsv(Fault fault) {
        String expected = fault.expected().replace("JSON file", "CSV or JSON file");
        return Fault.of(fault.file(), fault.found(), expected, fault.advice());
    }
}
