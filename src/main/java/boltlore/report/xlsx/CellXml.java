package boltlore.report.xlsx;

import boltlore.report.Cell;
import boltlore.report.Formula;
import boltlore.report.Utf8;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.IntStream;

/** Writes cells one after the other, each with the empty cells that it covers. */
final class CellXml implements Cell.Cases<Utf8> {

    private static final String STARTS_FORMULA = "=+-@\t\r";

    /** Day 0 of the usual date system; right from 1 March 1900, before which it counts a day that never was. */
    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

    private static final LocalDate FIRST_SURE_DAY = LocalDate.of(1900, 3, 1);

    private static final byte[] EMPTY = Utf8.encoded("\"/>");
    private static final byte[] TEXT = Utf8.encoded("\" t=\"s\"><v>");
    private static final byte[] VALUE = Utf8.encoded("\"><v>");
    private static final byte[] FORMULA = Utf8.encoded("\"><f>");
    private static final byte[] RESULT = Utf8.encoded("</f><v>");
    private static final byte[] END = Utf8.encoded("</v></c>");

    private final Utf8 xml;
    private final Styles styles;
    private final SharedTexts texts;
    private final FormulaText formulas;
    /** What a cell of each column begins with. */
    private final List<byte[]> columns;

    private byte[] row = {};
    private String lead = "";
    private Addresses.Here here = Addresses.Here.NOWHERE;

    CellXml(Utf8 xml, int columns, Styles styles, SharedTexts texts, FormulaText formulas) {
        this.xml = xml;
        this.styles = styles;
        this.texts = texts;
        this.formulas = formulas;
        this.columns = IntStream.range(0, columns)
                .mapToObj(column -> Utf8.encoded("<c r=\"" + Ref.column(column)))
                .toList();
    }

    /** Cells that follow stand there. */
    void go(Addresses.Here place) {
        here = place;
        row = Utf8.encoded(Integer.toString(place.row() + 1));
    }

    void append(LaidCell cell) {
        boolean quoted = cell.cell() instanceof Cell.Words words
                && startsFormula(words.text())
                && cell.lead().isEmpty();
        Face face = quoted ? cell.face().quote() : cell.face();
        begin(cell.column(), face);
        lead = cell.lead();
        cell.cell().as(this);
        for (int i = 1; i < cell.span(); i++) {
            begin(cell.column() + i, cell.face());
            xml.append(EMPTY);
        }
    }

    private void begin(int column, Face face) {
        xml.append(columns.get(column)).append(row).append(styles.reference(face));
    }

    private static boolean startsFormula(String text) {
        return !text.isEmpty() && STARTS_FORMULA.indexOf(text.charAt(0)) >= 0;
    }

    @Override
    public Utf8 empty() {
        return xml.append(EMPTY);
    }

    @Override
    public Utf8 words(String text) {
        int number = lead.isEmpty() ? texts.number(text) : texts.number(lead, text);
        return xml.append(TEXT).append(number).append(END);
    }

    @Override
    public Utf8 figure(BigDecimal value) {
        return xml.append(VALUE).append(value.toPlainString()).append(END);
    }

    @Override
    public Utf8 day(LocalDate value) {
        if (value.isBefore(FIRST_SURE_DAY)) {
            return words(value.toString());
        }
        return xml.append(VALUE)
                .append((int) ChronoUnit.DAYS.between(DAY_ZERO, value))
                .append(END);
    }

    @Override
    public Utf8 worked(Formula formula, BigDecimal result) {
        formulas.append(xml.append(FORMULA), formula, here).append(RESULT);
        return xml.append(result.toPlainString()).append(END);
    }
}
