package boltlore.trades.coating.written;

import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.SourceLocation;
import boltlore.json.TextShape;
import boltlore.trades.coating.FilmAcceptance;
import boltlore.trades.coating.FilmReading;
import boltlore.trades.coating.PowderIssued;
import java.math.BigDecimal;
import java.util.List;

/**
 * The same as JSON: <code>{"readings": [{"batch": 1, "part": "PV-BL-S", "piece": "BL-1001 1", "um": [70, 72, 68, 75, 71]}],
 * "issued": [{"run": 1, "kg": "3.4"}]}</code>.
 */
final class RecordJson {

    private static final int MOST_NUMBER = 999_999;

    private final Faults faults = new Faults();

    private RecordJson() {}

    static Outcome<Entries> read(String file, byte[] bytes) {
        return JsonFile.parse(file, bytes).then(json -> new RecordJson().entries(json));
    }

    private Outcome<Entries> entries(Json json) {
        ObjectReader reader = ObjectReader.of(json, faults);
        Entries entries = new Entries(
                reader.findObjects("readings", this::film), reader.findObjects("issued", RecordJson::issued));
        reader.done();
        return faults.orElse(entries);
    }

    private Written<FilmReading> film(ObjectReader reader) {
        int batch = reader.whole("batch", 1, MOST_NUMBER);
        String part = reader.text("part", TextShape.LINE);
        String piece = reader.findText("piece", TextShape.LINE).orElse("");
        List<BigDecimal> um = reader.findDecimals("um", Range.above(0, RecordFile.MOST_UM));
        if (reader.sound() && um.size() != FilmAcceptance.READINGS) {
            reader.faultAt("um", um.size() + " readings", FilmAcceptance.READINGS + " on each piece", "");
        }
        return written(new FilmReading(batch, part, piece, um), reader.spot());
    }

    private static Written<PowderIssued> issued(ObjectReader reader) {
        int run = reader.whole("run", 1, MOST_NUMBER);
        BigDecimal kg = reader.decimal("kg", Range.above(0, RecordFile.MOST_KG));
        return written(new PowderIssued(run, kg), reader.spot());
    }

    private static <T> Written<T> written(T value, SourceLocation location) {
        return new Written<>(value, location.file(), location.line(), location.pointer());
    }
}
