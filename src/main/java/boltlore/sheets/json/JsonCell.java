package boltlore.sheets.json;

import boltlore.sheets.Cell;
import boltlore.sheets.Formula;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/** A cell's exact value as text; nothing for an empty cell. */
final class JsonCell implements Cell.Cases<Optional<String>> {

    private static final JsonCell CELL = new JsonCell();

    private JsonCell() {}

    static Optional<String> of(Cell cell) {
        return cell.as(CELL);
    }

    @Override
    public Optional<String> empty() {
        return Optional.empty();
    }

    @Override
    public Optional<String> words(String text) {
        return Optional.of(text);
    }

    @Override
    public Optional<String> figure(BigDecimal value) {
        return Optional.of(value.toPlainString());
    }

    @Override
    public Optional<String> day(LocalDate value) {
        return Optional.of(value.toString());
    }

    @Override
    public Optional<String> worked(Formula formula, BigDecimal result) {
        return Optional.of(result.toPlainString());
    }
}
