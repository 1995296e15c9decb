package boltlore.report.json;

import boltlore.json.JsonText;
import boltlore.report.Cell;
import boltlore.report.Formula;
import java.math.BigDecimal;
import java.time.LocalDate;

/** Writes a cell's exact value as text; null for an empty cell. */
final class JsonCell implements Cell.Cases<JsonText> {

    private final JsonText json;

    JsonCell(JsonText json) {
        this.json = json;
    }

    @Override
    public JsonText empty() {
        return json.nothing();
    }

    @Override
    public JsonText words(String text) {
        return json.text(text);
    }

    @Override
    public JsonText figure(BigDecimal value) {
        return json.text(value.toPlainString());
    }

    @Override
    public JsonText day(LocalDate value) {
        return json.text(value.toString());
    }

    @Override
    public JsonText worked(Formula formula, BigDecimal result) {
        return figure(result);
    }
}
