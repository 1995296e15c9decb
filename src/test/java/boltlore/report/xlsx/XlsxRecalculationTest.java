package boltlore.report.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.BulkExample;
import boltlore.report.Column;
import boltlore.report.Formula;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.WorkedExample;
import boltlore.trades.bill.sheets.DemoKit;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the core has computed against what another program makes of the formulas, in every formula cell. */
@Tag("office")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class XlsxRecalculationTest {

    /** Doubles carry 15 to 16 digits; no sum here has more than a dozen before the last that matters. */
    private static final BigDecimal NEAR = new BigDecimal("0.000001");

    private final Map<String, byte[]> written = new TreeMap<>();
    private Map<String, byte[]> recalculated = Map.of();

    @BeforeAll
    void recalculate(@TempDir Path folder) throws IOException, InterruptedException {
        write(folder, "example.xlsx", WorkedExample.workbook());
        write(folder, "bulk.xlsx", BulkExample.workbooks().get(0));
        write(folder, "bl-1001.xlsx", DemoKit.of("BL-1001").billBook());
        write(folder, "bl-1010.xlsx", DemoKit.of("BL-1010").billBook());
        write(folder, "all.xlsx", everyFormula(BigDecimal.ZERO));
        write(folder, "wrong.xlsx", everyFormula(new BigDecimal("0.01")));
        recalculated = Recalculated.all(folder);
    }

    private void write(Path folder, String name, Report report) throws IOException {
        byte[] bytes = Opened.bytes(report);
        written.put(name, bytes);
        Files.write(folder.resolve(name), bytes);
    }

    @Test
    void every_formula_of_the_worked_example_comes_to_what_the_core_has_computed() throws IOException {
        assertThat(differences("example.xlsx")).isEmpty();
    }

    @Test
    void every_formula_of_a_bill_of_400_rows_comes_to_what_the_core_has_computed() throws IOException {
        assertThat(formulas(written, "bulk.xlsx")).hasSizeGreaterThan(700);
        assertThat(differences("bulk.xlsx")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001.xlsx", "bl-1010.xlsx"})
    void every_formula_of_a_demo_order_comes_to_what_the_core_has_computed(String file) throws IOException {
        assertThat(formulas(written, file)).hasSizeGreaterThan(900);
        assertThat(differences(file)).isEmpty();
    }

    @Test
    void every_kind_of_formula_comes_to_what_it_says() throws IOException {
        assertThat(formulas(written, "all.xlsx")).hasSize(10);
        assertThat(differences("all.xlsx")).isEmpty();
    }

    @Test
    @DisplayName("A result that is a cent off is noticed in every formula")
    void a_result_that_is_a_cent_off_is_noticed() throws IOException {
        assertThat(differences("wrong.xlsx")).hasSize(10);
    }

    private List<String> differences(String file) throws IOException {
        Map<String, ReadBack.ReadCell> ours = formulas(written, file);
        Map<String, ReadBack.ReadCell> theirs = formulas(recalculated, file);
        List<String> differences = new ArrayList<>();
        ours.forEach((address, cell) -> {
            ReadBack.ReadCell other = theirs.get(address);
            if (other == null || !near(cell.value(), other.value())) {
                differences.add(address + " " + cell + " but " + other);
            }
        });
        return differences;
    }

    private static boolean near(String ours, String theirs) {
        return theirs.matches("-?[0-9.]+")
                && new BigDecimal(ours).subtract(new BigDecimal(theirs)).abs().compareTo(NEAR) < 0;
    }

    private static Map<String, ReadBack.ReadCell> formulas(Map<String, byte[]> files, String file) throws IOException {
        Map<String, ReadBack.ReadCell> formulas = new TreeMap<>();
        List<List<ReadBack.ReadCell>> sheets = ReadBack.sheets(files.getOrDefault(file, new byte[0]));
        for (int i = 0; i < sheets.size(); i++) {
            for (ReadBack.ReadCell cell : sheets.get(i)) {
                if (!cell.formula().isEmpty()) {
                    formulas.put(i + "!" + cell.address(), cell);
                }
            }
        }
        return formulas;
    }

    /** Two groups of two rows; the off amount is added to every result. */
    private static Report everyFormula(BigDecimal off) {
        TableBuilder table = Table.named("parts")
                .columns(
                        Column.text("part", "Part"),
                        Column.text("source", "Source"),
                        Column.decimal("quantity", "Quantity", 2),
                        Column.decimal("cost", "Cost", 4));
        table.group("a", "A");
        plain(table.row("a1"), "buy", "2", "3.335");
        plain(table.row("a2"), "*", "-4", "1.25");
        table.subtotal("A").sum("cost", off.add(new BigDecimal("4.585")));
        table.group("b", "B");
        plain(table.row("b1"), "BUY", "3", "7");
        plain(table.row("b2"), ">0", "5", "0.0001");
        table.subtotal("B").sum("cost", off.add(new BigDecimal("7.0001")));
        worked(table, "all-rows", Formula.sumOf("cost"), off, "11.5851");
        table.subtotal("by-source", "to")
                .put("source", "buy")
                .put("cost", Formula.sumWhere("cost", "source"), off.add(new BigDecimal("10.335")));
        table.subtotal("star", "to")
                .put("source", "*")
                .put("cost", Formula.sumWhere("cost", "source"), off.add(new BigDecimal("1.25")));
        Formula product = Formula.product(Formula.cell("a1", "quantity"), Formula.cell("a1", "cost"));
        worked(table, "rounded", product.rounded(1), off, "6.7");
        worked(
                table,
                "difference",
                Formula.cell("a1", "cost").minus(product.minus(Formula.cell("b1", "cost"))),
                off,
                "3.665");
        Formula sum = Formula.sum(Formula.cell("a1", "quantity"), Formula.fixed(new BigDecimal("-0.5")));
        worked(
                table,
                "quotient",
                sum.over(Formula.cell("a2", "quantity").over(Formula.fixed(new BigDecimal("8")))),
                off,
                "-3");
        worked(table, "squared", Formula.product(sum, sum), off, "2.25");
        table.total("kit", "Kit").sumOfSubtotals("cost", off.add(new BigDecimal("11.5851")));
        return Report.named("all", "All")
                .page(Page.named("It's all").add(table))
                .build();
    }

    private static void plain(RowBuilder row, String source, String quantity, String cost) {
        row.put("source", source).put("quantity", new BigDecimal(quantity)).put("cost", new BigDecimal(cost));
    }

    private static void worked(TableBuilder table, String key, Formula formula, BigDecimal off, String result) {
        table.subtotal(key, key).put("cost", formula, off.add(new BigDecimal(result)));
    }
}
