package boltlore.report;

/**
 * One named value.
 *
 * @param key stable name for formulas and JSON
 * @param label what people read, in the sheet's language
 */
public record Particular(String key, String label, Kind kind, Cell cell) {}
