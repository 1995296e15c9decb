package boltlore.report.csv;

import boltlore.report.Cell;
import boltlore.report.Formula;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * One field. Text that a spreadsheet program would take for a formula gets an apostrophe in front, as OWASP's page 'CSV
 * Injection' advises; numbers, negative ones too, are written as they are.
 */
final class CsvField implements Cell.Cases<String> {

    private static final String STARTS_FORMULA = "=+-@\t\r";
    private static final CsvField FIELD = new CsvField();

    private CsvField() {}

    static String of(Cell cell) {
        return cell.as(FIELD);
    }

    static String of(String text) {
        return FIELD.words(text);
    }

    @Override
    public String empty() {
        return "";
    }

    @Override
    public String words(String text) {
        boolean startsFormula = !text.isEmpty() && STARTS_FORMULA.indexOf(text.charAt(0)) >= 0;
        return quoted(startsFormula ? "'" + text : text);
    }

    @Override
    public String figure(BigDecimal value) {
        return value.toPlainString();
    }

    @Override
    public String day(LocalDate value) {
        return value.toString();
    }

    @Override
    public String worked(Formula formula, BigDecimal result) {
        return result.toPlainString();
    }

    private static String quoted(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == ',' || c == '"' || c == '\r' || c == '\n') {
                return '"' + text.replace("\"", "\"\"") + '"';
            }
        }
        return text;
    }
}
