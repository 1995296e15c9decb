package boltlore.trades.coating.written;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonFile;
import java.nio.file.Path;
import java.util.Locale;

/** One file that the coating shop wrote: JSON where its name says so, else CSV. */
final class RecordFile {

    /** No film of powder is thicker; a larger number is in another unit or a slip. */
    static final int MOST_UM = 1000;

    static final int MOST_KG = 100_000;

    static final String FILM = "a film in µm, above 0 and at most " + MOST_UM;
    static final String POWDER = "kg of powder, above 0 and at most " + MOST_KG;

    private RecordFile() {}

    static Outcome<Entries> read(Path file) {
        boolean json = file.toString().toLowerCase(Locale.ROOT).endsWith(".json");
        Outcome<byte[]> bytes = JsonFile.bytes(file);
        if (json) {
            return bytes.then(read -> RecordJson.read(file.toString(), read));
        }
        return bytes instanceof Outcome.Sound<byte[]> sound
                ? RecordCsv.read(file.toString(), sound.value())
                : Outcome.faulty(bytes.faults().stream().map(RecordFile::ofCsv).toList());
    }

    private static Fault ofCsv(Fault fault) {
        return Fault.of(fault.file(), fault.found(), "a CSV file that can be read", fault.advice());
    }
}
