package boltlore.sheets.xlsx;

import boltlore.sheets.Cell;
import boltlore.sheets.Formula;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Writes cells one after the other, each with the empty cells that it covers. */
final class CellXml {

    private static final String STARTS_FORMULA = "=+-@\t\r";

    /** Day 0 of the usual date system; right from 1 March 1900, before which it counts a day that never was. */
    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

    private static final LocalDate FIRST_SURE_DAY = LocalDate.of(1900, 3, 1);

    private final StringBuilder xml;
    private final Styles styles;
    private final SharedTexts texts;
    private final FormulaText formulas;

    CellXml(StringBuilder xml, Styles styles, SharedTexts texts, FormulaText formulas) {
        this.xml = xml;
        this.styles = styles;
        this.texts = texts;
        this.formulas = formulas;
    }

    void append(LaidCell cell, Addresses.Here here) {
        boolean quoted = cell.cell() instanceof Cell.Words words
                && startsFormula(words.text())
                && cell.lead().isEmpty();
        Face face = quoted ? cell.face().quote() : cell.face();
        xml.append("<c r=\"");
        Ref.append(xml, cell.column(), here.row());
        xml.append("\" s=\"").append(styles.number(face)).append('"');
        cell.cell().as(new Value(cell.lead(), here));
        for (int i = 1; i < cell.span(); i++) {
            xml.append("<c r=\"");
            Ref.append(xml, cell.column() + i, here.row());
            xml.append("\" s=\"").append(styles.number(cell.face())).append("\"/>");
        }
    }

    private static boolean startsFormula(String text) {
        return !text.isEmpty() && STARTS_FORMULA.indexOf(text.charAt(0)) >= 0;
    }

    /** Writes what follows a cell's address and style. */
    private final class Value implements Cell.Cases<StringBuilder> {

        private final String lead;
        private final Addresses.Here here;

        Value(String lead, Addresses.Here here) {
            this.lead = lead;
            this.here = here;
        }

        @Override
        public StringBuilder empty() {
            return xml.append("/>");
        }

        @Override
        public StringBuilder words(String text) {
            int number = lead.isEmpty() ? texts.number(text) : texts.number(lead, text);
            return xml.append(" t=\"s\"><v>").append(number).append("</v></c>");
        }

        @Override
        public StringBuilder figure(BigDecimal value) {
            return xml.append("><v>").append(value.toPlainString()).append("</v></c>");
        }

        @Override
        public StringBuilder day(LocalDate value) {
            if (value.isBefore(FIRST_SURE_DAY)) {
                return words(value.toString());
            }
            return xml.append("><v>")
                    .append(ChronoUnit.DAYS.between(DAY_ZERO, value))
                    .append("</v></c>");
        }

        @Override
        public StringBuilder worked(Formula formula, BigDecimal result) {
            xml.append("><f>").append(Xml.escaped(formulas.of(formula, here))).append("</f><v>");
            return xml.append(result.toPlainString()).append("</v></c>");
        }
    }
}
