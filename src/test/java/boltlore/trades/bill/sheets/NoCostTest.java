package boltlore.trades.bill.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Item;
import boltlore.report.Report;
import boltlore.report.ReportWriter;
import boltlore.report.SheetFile;
import boltlore.report.csv.CsvWriter;
import boltlore.report.json.JsonWriter;
import boltlore.report.text.TextWriter;
import boltlore.report.xlsx.XlsxWriter;
import boltlore.trades.costing.CostedBill;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every part of every written file is searched: cells, comments, hidden sheets, chart caches, properties, styles. */
@DisplayName("No cost leaks out of the contents list")
class NoCostTest {

    private static final List<ReportWriter> WRITERS =
            List.of(new XlsxWriter(), new CsvWriter(), new JsonWriter(), new TextWriter(160));

    @ParameterizedTest
    @ValueSource(strings = {"BL-1001", "BL-1002", "BL-1010", "BL-1011", "BL-1012"})
    @DisplayName("as an amount of the bill, the currency or a word for money, in any part of any format")
    void none(String order) {
        DemoKit kit = DemoKit.of(order);

        assertThat(found(kit.contents(), kit.priced())).isEmpty();
    }

    @Test
    @DisplayName("and the same search finds all three in the bill itself")
    void search_finds() {
        DemoKit kit = DemoKit.of("BL-1010");
        Set<String> found = found(kit.billBook(), kit.priced());
        String direct = kit.priced().totals().cost().toPlainString();
        String battery = kit.priced().bySubSystem().get("battery").cost().toPlainString();

        assertThat(found)
                .anyMatch(leak -> leak.startsWith("bill.xlsx/xl/worksheets/") && leak.endsWith(" " + direct))
                .anyMatch(leak -> leak.startsWith("bill.xlsx/xl/charts/") && leak.endsWith(" " + battery))
                .anyMatch(leak -> leak.startsWith("bill.xlsx/xl/styles") && leak.endsWith(" EUR"))
                .anyMatch(leak -> leak.startsWith("bill.json") && leak.endsWith(" price"));
    }

    @Test
    @DisplayName("in a hidden sheet, a comment or a chart, because there is none")
    void no_hiding_place() {
        DemoKit kit = DemoKit.of("BL-1010");
        List<WrittenPart> parts = new XlsxWriter()
                .write(kit.contents()).stream().flatMap(WrittenPart::of).toList();

        assertThat(parts)
                .extracting(WrittenPart::name)
                .noneMatch(name -> name.contains("comment") || name.contains("chart") || name.contains("external"))
                .filteredOn(name -> name.contains("/worksheets/sheet"))
                .as("the contents, and serial numbers to write down")
                .hasSize(2);
        assertThat(parts).noneMatch(part -> part.text().contains("hidden"));
    }

    private static Set<String> found(Report report, CostedBill costed) {
        Set<String> leaks = new TreeSet<>();
        for (ReportWriter writer : WRITERS) {
            for (SheetFile file : writer.write(report)) {
                WrittenPart.of(file).forEach(part -> leaks.addAll(part.leaks(amounts(costed), costed.currency())));
            }
        }
        return leaks;
    }

    /** All money of the order that is no quantity, thread, strength class or size of a hose by chance. */
    private static Set<BigDecimal> amounts(CostedBill costed) {
        Set<BigDecimal> amounts = new TreeSet<>();
        Stream.of(ofRows(costed), ofExtras(costed), ofTotals(costed))
                .flatMap(each -> each)
                .filter(NoCostTest::isTelling)
                .forEach(amounts::add);
        costed.bill().all().map(Item::quantity).forEach(amounts::remove);
        costed.bill().quantities().values().forEach(amounts::remove);
        return amounts;
    }

    private static boolean isTelling(BigDecimal amount) {
        int digits = amount.stripTrailingZeros().scale();
        return digits > 1 || (digits == 1 && amount.compareTo(new BigDecimal("100")) > 0);
    }

    private static Stream<BigDecimal> ofRows(CostedBill costed) {
        return costed.rows().stream()
                .flatMap(row -> Stream.of(row.unitCost(), row.extended(), row.coating(), row.total()));
    }

    private static Stream<BigDecimal> ofExtras(CostedBill costed) {
        return costed.extras().stream().flatMap(extra -> Stream.of(extra.cost()));
    }

    private static Stream<BigDecimal> ofTotals(CostedBill costed) {
        Stream<BigDecimal> totals = costed.bySubSystem().values().stream()
                .flatMap(some -> Stream.of(some.own(), some.coating(), some.cost()));
        return Stream.concat(
                totals, Stream.of(costed.totals().cost(), costed.totals().own()));
    }
}
