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
 * The same as JSON, as the record that is written beside the batch sheet: <code>{"readings": [{"limits": "F…", "part":
 * "PV-BL-S", "piece": "BL-1001 1", "um": [70, 72, 68, 75, 71]}], "issued": [{"run": 1, "kg": "3.4"}]}</code>.
 */
final class RecordJson {

    private static final int MOST_NUMBER = 999_999;

    private final Faults faults = new Faults();

    private RecordJson() {}

    static Outcome<Entries> read(String file, byte[] bytes) {
        return JsonFile.parse(file, bytes).then(json -> new RecordJson().entries(json));
    }

    /** Runs without kg are passed over. */
    private Outcome<Entries> entries(Json json) {
        ObjectReader reader = ObjectReader.of(json, faults);
        boolean filmRead = reader.has("readings");
        List<Written<FilmReading>> film = reader.findObjects("readings", this::film);
        List<Written<PowderIssued>> issued = reader.findObjects("issued", RecordJson::issued).stream()
                .filter(written -> written.value().kg().signum() > 0)
                .toList();
        Entries entries = new Entries(filmRead, film, issued);
        reader.done();
        return faults.orElse(entries);
    }

    private Written<FilmReading> film(ObjectReader reader) {
        Integer batch = reader.findWhole("batch", 1, MOST_NUMBER);
        FilmReading.Sheet sheet = new FilmReading.Sheet(
                batch == null ? "" : batch.toString(),
                reader.findText("lot", TextShape.LINE).orElse(""),
                reader.findText("finish", TextShape.LINE).orElse(""),
                reader.text("limits", TextShape.LINE));
        String part = reader.text("part", TextShape.LINE);
        String piece = reader.text("piece", TextShape.LINE);
        Integer coating = reader.findWhole("coating", 1, MOST_NUMBER);
        List<BigDecimal> um = reader.findDecimals("um", Range.above(0, RecordFile.MOST_UM));
        if (reader.sound() && !um.isEmpty() && um.size() != FilmAcceptance.READINGS) {
            reader.faultAt("um", um.size() + " readings", FilmAcceptance.READINGS + " on each piece", "");
        }
        return written(
                new FilmReading(
                        sheet, part, piece, coating == null ? 1 : coating, reader.findDate("on"), um, flaw(reader)),
                reader.spot());
    }

    private static String flaw(ObjectReader reader) {
        String flaw = reader.findText("flaw", TextShape.LINE).orElse("");
        boolean good = reader.truth("good", true);
        return flaw.isEmpty() && !good ? "not accepted" : flaw;
    }

    private static Written<PowderIssued> issued(ObjectReader reader) {
        int run = reader.whole("run", 1, MOST_NUMBER);
        String code = reader.findText("code", TextShape.LINE).orElse("");
        BigDecimal kg = reader.findDecimal("kg", Range.above(0, RecordFile.MOST_KG));
        return written(new PowderIssued(run, code, kg == null ? BigDecimal.ZERO : kg), reader.spot());
    }

    private static <T> Written<T> written(T value, SourceLocation location) {
        return new Written<>(value, location.file(), location.line(), location.pointer());
    }
}
