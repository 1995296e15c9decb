package boltlore.scale;

import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.report.xlsx.Recalculated;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.dhatim.fastexcel.reader.ReadableWorkbook;

/**
 * A workbook that answers the four questions by formulas: a row a valid order with its cost, both ready made; beside them
 * whether the row keeps the choices that stand on the first sheet; on that sheet an answer by COUNTIFS a value, the
 * smallest cost, and the count. LibreOffice works it out. Its time is that of the formulas alone: what the same workbook
 * without them takes, LibreOffice's start and reading included, is not counted; of two runs each the shorter counts.
 */
final class FormulaWorkbook {

    /** Rows of a sheet, less one for headings. */
    static final int MOST_ORDERS = (1 << 20) - 1;

    private static final String ORDERS = "orders";
    private static final int RUNS = 2;
    private static final int CHOICES_ROW = 0;
    private static final int ANSWERS_ROW = 1;

    /** All answers to one partial choice. */
    record Answers(Set<Choice> open, boolean possible, OptionalLong cheapest, BigInteger count) {}

    /** @param milliseconds for all questions of one partial choice */
    record Worked(List<Answers> answers, double milliseconds) {}

    private record Valid(List<String> values, long cents) {}

    private final List<Option> options;
    private final List<Valid> orders = new ArrayList<>();

    private FormulaWorkbook(List<Option> options) {
        this.options = options;
    }

    /** Answers for each of the partial choices, a file each. */
    static Worked work(Asked asked, PlainEnumeration all, List<List<Choice>> partial)
            throws IOException, InterruptedException {
        FormulaWorkbook workbook = new FormulaWorkbook(asked.family().options());
        all.each(List.of(), (values, cents) -> workbook.orders.add(new Valid(values, cents)));
        double without = Double.MAX_VALUE;
        double with = Double.MAX_VALUE;
        List<Answers> answers = List.of();
        for (int i = 0; i < RUNS; i++) {
            List<Answers> read = new ArrayList<>();
            without = Math.min(without, workbook.recalculated(partial, false, read));
            with = Math.min(with, workbook.recalculated(partial, true, read));
            answers = read;
        }
        return new Worked(answers, Math.max(0, with - without) / partial.size());
    }

    private double recalculated(List<List<Choice>> partial, boolean formulas, List<Answers> answers)
            throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("formulas");
        for (int i = 0; i < partial.size(); i++) {
            write(folder.resolve("asked%02d.xlsx".formatted(i)), partial.get(i), formulas);
        }
        long begun = System.nanoTime();
        List<byte[]> done = List.copyOf(Recalculated.all(folder).values());
        double took = (System.nanoTime() - begun) / 1e6;
        if (formulas) {
            for (byte[] file : done) {
                answers.add(read(file));
            }
        }
        return took;
    }

    private void write(Path file, List<Choice> kept, boolean formulas) throws IOException {
        try (SXSSFWorkbook workbook = new SXSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            Sheet asked = workbook.createSheet("asked");
            Row choices = asked.createRow(CHOICES_ROW);
            for (Choice choice : kept) {
                choices.createCell(place(choice)).setCellValue(choice.value());
            }
            if (formulas) {
                ask(asked);
            }
            Sheet sheet = workbook.createSheet(ORDERS);
            for (int row = 0; row < orders.size(); row++) {
                order(sheet.createRow(row), orders.get(row), formulas);
            }
            workbook.write(out);
        }
    }

    private int place(Choice choice) {
        return options.stream().map(Option::name).toList().indexOf(choice.option());
    }

    private void order(Row row, Valid order, boolean formulas) {
        List<String> same = new ArrayList<>();
        String number = Integer.toString(row.getRowNum() + 1);
        for (int place = 0; place < options.size(); place++) {
            row.createCell(place).setCellValue(order.values().get(place));
            String column = CellReference.convertNumToColString(place);
            String choice = "asked!" + column + "$" + (CHOICES_ROW + 1);
            same.add("(" + choice + "=\"\")+(" + choice + "=" + column + number + ")>0");
        }
        row.createCell(options.size()).setCellValue((double) order.cents());
        if (formulas) {
            String cost = CellReference.convertNumToColString(options.size()) + number;
            String keeps = CellReference.convertNumToColString(options.size() + 1) + number;
            row.createCell(options.size() + 1).setCellFormula("IF(AND(" + String.join(",", same) + "),1,0)");
            row.createCell(options.size() + 2).setCellFormula("IF(" + keeps + "=1," + cost + ",\"\")");
        }
    }

    /** Count and least cost, then a row an option with a cell a value. */
    private void ask(Sheet sheet) {
        Row sums = sheet.createRow(ANSWERS_ROW);
        sums.createCell(0).setCellFormula("SUM(" + column(options.size() + 1) + ")");
        sums.createCell(1).setCellFormula("MIN(" + column(options.size() + 2) + ")");
        sums.createCell(2).setCellFormula("IF(A" + (ANSWERS_ROW + 1) + ">0,1,0)");
        for (int place = 0; place < options.size(); place++) {
            Row row = sheet.createRow(ANSWERS_ROW + 1 + place);
            List<String> values = options.get(place).valueNames();
            for (int value = 0; value < values.size(); value++) {
                row.createCell(value)
                        .setCellFormula("IF(COUNTIFS(" + column(place) + ",\"" + values.get(value) + "\","
                                + column(options.size() + 1) + ",1)>0,1,0)");
            }
        }
    }

    private String column(int place) {
        String letters = CellReference.convertNumToColString(place);
        return ORDERS + "!" + letters + "$1:" + letters + "$" + orders.size();
    }

    private Answers read(byte[] file) throws IOException {
        try (ReadableWorkbook workbook = new ReadableWorkbook(new java.io.ByteArrayInputStream(file))) {
            List<org.dhatim.fastexcel.reader.Row> rows =
                    workbook.getFirstSheet().read();
            Set<Choice> open = new HashSet<>();
            for (int place = 0; place < options.size(); place++) {
                Option option = options.get(place);
                for (int value = 0; value < option.values().size(); value++) {
                    if (number(rows, ANSWERS_ROW + 1 + place, value) == 1) {
                        open.add(new Choice(option.name(), option.valueNames().get(value)));
                    }
                }
            }
            long count = number(rows, ANSWERS_ROW, 0);
            OptionalLong least = count == 0 ? OptionalLong.empty() : OptionalLong.of(number(rows, ANSWERS_ROW, 1));
            return new Answers(open, number(rows, ANSWERS_ROW, 2) == 1, least, BigInteger.valueOf(count));
        }
    }

    private static long number(List<org.dhatim.fastexcel.reader.Row> rows, int row, int column) {
        return new BigDecimal(rows.stream()
                        .filter(each -> each.getRowNum() == row + 1)
                        .findFirst()
                        .orElseThrow()
                        .getCell(column)
                        .getRawValue())
                .longValueExact();
    }
}
