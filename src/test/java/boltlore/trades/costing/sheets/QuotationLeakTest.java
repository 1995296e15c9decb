package boltlore.trades.costing.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.SalesTax;
import boltlore.demo.Demo;
import boltlore.report.Report;
import boltlore.report.ReportWriter;
import boltlore.report.SheetFile;
import boltlore.report.csv.CsvWriter;
import boltlore.report.json.JsonWriter;
import boltlore.report.text.TextWriter;
import boltlore.report.xlsx.XlsxWriter;
import boltlore.trades.bill.sheets.WrittenPart;
import boltlore.trades.costing.ItemCost;
import boltlore.trades.costing.cost.Bridge;
import boltlore.trades.costing.cost.CostedItem;
import boltlore.trades.costing.cost.Elements;
import boltlore.trades.costing.cost.FullCost;
import boltlore.trades.costing.cost.LandedPart;
import boltlore.trades.costing.cost.Work;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.costing.quote.QuotedExtra;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every part of every written file is searched: cells, comments, hidden sheets, names, chart caches, properties. */
@DisplayName("Nothing of the workshop's own figures leaks out of a quotation:")
class QuotationLeakTest {

    private static final List<ReportWriter> WRITERS =
            List.of(new XlsxWriter(), new CsvWriter(), new JsonWriter(), new TextWriter(160));

    /** Words that would tell how a price came about, in the quotation's languages. */
    private static final List<String> TELLING = List.of(
            "mark-up",
            "markup",
            "margin ",
            "landed",
            "overhead",
            "set-up",
            "labour",
            "supplier",
            "aufschlag",
            "handelsspanne",
            "selbstkosten",
            "lieferant",
            "gemeinkosten",
            "fournisseur",
            "coût",
            "marge ");

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1002", "bl-1010", "bl-1011", "bl-1012", "bl-2001"})
    void no_amount_no_supplier_and_no_telling_word_of_a_demo_order(String order) {
        QuotedDemo demo = QuotedDemo.of(Demo.catalogue(), order);
        assertThat(leaks(demo.quotation(), demo)).isEmpty();
    }

    @Test
    void the_same_search_finds_all_of_them_in_the_cost_statement() {
        QuotedDemo demo = QuotedDemo.of(Demo.catalogue(), "bl-1010");
        assertThat(leaks(demo.costStatement(), demo))
                .anyMatch(leak -> leak.startsWith("cost-statement.xlsx/xl/worksheets/") && leak.endsWith(total(demo)))
                .anyMatch(leak -> leak.startsWith("cost-statement.json") && leak.endsWith(total(demo)))
                .anyMatch(leak -> leak.endsWith(" Tarnholt Drives"))
                .anyMatch(leak -> leak.endsWith(" overhead"));
    }

    private static String total(QuotedDemo demo) {
        return " " + demo.calculation().cost().kit().total().toPlainString();
    }

    @Test
    void no_figure_and_no_name_of_a_canary_catalogue(@TempDir Path folder) throws IOException {
        Catalogue canary = CanaryCatalogue.in(folder);
        for (String order : List.of("bl-1001", "bl-1010", "bl-1011", "bl-2001")) {
            QuotedDemo demo = QuotedDemo.of(canary, order);
            assertThat(canaries(demo.costStatement())).as(order).hasSizeGreaterThan(50);
            assertThat(canaries(demo.quotation())).as(order).isEmpty();
            assertThat(leaks(demo.quotation(), demo)).as(order).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "xl/comments1.xml",
                "xl/worksheets/sheet9.xml",
                "xl/charts/chart1.xml",
                "docProps/custom.xml",
                "docProps/app.xml",
                "xl/externalLinks/externalLink1.xml"
            })
    void and_the_search_would_catch_one_in_any_part_of_the_file(String part) throws IOException {
        QuotedDemo demo = QuotedDemo.of(Demo.catalogue(), "bl-1001");
        String amount = demo.calculation().cost().kit().total().toPlainString();
        for (SheetFile file : new XlsxWriter().write(demo.quotation())) {
            SheetFile planted = plant(file, part, "<x>" + amount + " Kessamere Cells 70001.93</x>");
            List<WrittenPart> parts = WrittenPart.of(planted).toList();
            assertThat(leaks(parts, demo))
                    .containsExactly(
                            "quotation.xlsx/" + part + " " + amount, "quotation.xlsx/" + part + " Kessamere Cells");
            assertThat(parts)
                    .anyMatch(
                            each -> CanaryCatalogue.FIGURE.matcher(each.text()).find());
        }
    }

    @Test
    void there_is_no_hiding_place_in_the_workbook() {
        QuotedDemo demo = QuotedDemo.of(Demo.catalogue(), "bl-1010");
        List<WrittenPart> parts = parts(demo.quotation())
                .filter(part -> part.name().startsWith("quotation.xlsx"))
                .toList();
        assertThat(parts)
                .extracting(WrittenPart::name)
                .noneMatch(name -> name.contains("comment")
                        || name.contains("chart")
                        || name.contains("external")
                        || name.contains("media"));
        assertThat(parts)
                .filteredOn(part -> part.name().contains("/worksheets/sheet"))
                .hasSize(1);
        assertThat(parts).noneMatch(part -> part.text().contains("hidden"));
    }

    /** The file with one more part, or with more in a part that it has. */
    private static SheetFile plant(SheetFile file, String part, String text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(file.content()));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                if (!entry.getName().equals(part)) {
                    out.putNextEntry(new ZipEntry(entry.getName()));
                    in.transferTo(out);
                }
            }
            out.putNextEntry(new ZipEntry(part));
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return new SheetFile(file.name(), bytes.toByteArray());
    }

    private static Stream<WrittenPart> parts(Report report) {
        return WRITERS.stream().flatMap(writer -> writer.write(report).stream()).flatMap(WrittenPart::of);
    }

    private static Set<String> canaries(Report report) {
        Set<String> found = new TreeSet<>();
        parts(report).forEach(part -> {
            CanaryCatalogue.FIGURE
                    .matcher(part.text())
                    .results()
                    .forEach(match -> found.add(part.name() + match.group()));
            if (part.text().contains(CanaryCatalogue.NAME)) {
                found.add(part.name() + CanaryCatalogue.NAME);
            }
        });
        return found;
    }

    private static List<String> leaks(Report report, QuotedDemo demo) {
        return leaks(parts(report).toList(), demo);
    }

    private static List<String> leaks(List<WrittenPart> parts, QuotedDemo demo) {
        Set<BigDecimal> amounts = amounts(demo);
        return parts.stream()
                .flatMap(part -> Stream.of(
                                part.numbers()
                                        .map(BigDecimal::stripTrailingZeros)
                                        .filter(amounts::contains)
                                        .map(BigDecimal::toPlainString),
                                names(demo).filter(part.text()::contains),
                                TELLING.stream().filter(part.text().toLowerCase(Locale.ROOT)::contains))
                        .flatMap(each -> each)
                        .map(leak -> part.name() + " " + leak))
                .toList();
    }

    private static Stream<String> names(QuotedDemo demo) {
        return Stream.concat(
                demo.catalogue().workshop().suppliers().keySet().stream(),
                demo.catalogue().workshop().coating().coaters().keySet().stream());
    }

    /** All money of the calculation that the customer is not quoted, and that is no quantity by chance. */
    private static Set<BigDecimal> amounts(QuotedDemo demo) {
        FullCost cost = demo.calculation().cost();
        Set<BigDecimal> amounts = new TreeSet<>();
        Stream.of(ofRows(cost), ofSums(cost), ofCalculation(demo))
                .flatMap(each -> each)
                .map(BigDecimal::stripTrailingZeros)
                .filter(QuotationLeakTest::isTelling)
                .forEach(amounts::add);
        demo.bill().quantities().values().stream()
                .map(BigDecimal::stripTrailingZeros)
                .forEach(amounts::remove);
        quoted(demo.calculation().quotation())
                .map(BigDecimal::stripTrailingZeros)
                .forEach(amounts::remove);
        return amounts;
    }

    private static boolean isTelling(BigDecimal amount) {
        return amount.scale() > 1 || (amount.scale() == 1 && amount.compareTo(new BigDecimal("100")) > 0);
    }

    private static Stream<BigDecimal> ofRows(FullCost cost) {
        Stream<BigDecimal> elements = cost.rows().stream().flatMap(row -> row.elements().amounts().values().stream());
        Stream<BigDecimal> bill =
                cost.rows().stream().map(CostedItem::priced).flatMap(row -> Stream.of(row.unitCost(), row.total()));
        Stream<BigDecimal> extended = cost.costed().rows().stream().map(ItemCost::extended);
        return Stream.of(elements, bill, extended, cost.landed().stream().map(LandedPart::landed))
                .flatMap(each -> each);
    }

    private static Stream<BigDecimal> ofSums(FullCost cost) {
        Bridge bridge = Bridge.of(cost);
        Stream<Elements> sums =
                Stream.concat(Stream.of(cost.kit(), cost.ofExtras()), cost.bySubSystem().values().stream());
        return Stream.of(
                        sums.flatMap(sum -> Stream.concat(sum.amounts().values().stream(), Stream.of(sum.total()))),
                        cost.work().stream().map(Work::cost),
                        Stream.of(bridge.direct(), bridge.held(), bridge.work(), bridge.delivery(), cost.total()))
                .flatMap(each -> each);
    }

    private static Stream<BigDecimal> ofCalculation(QuotedDemo demo) {
        return Stream.of(
                demo.calculation().reckoned(),
                demo.calculation().left().setScale(2, RoundingMode.HALF_UP),
                demo.calculation().marginLeftPercent());
    }

    private static Stream<BigDecimal> quoted(Quotation quotation) {
        Stream<BigDecimal> rate =
                Stream.concat(Stream.ofNullable(quotation.rate()).map(ExchangeRate::forOne), shares(quotation));
        return Stream.concat(
                Stream.concat(
                        rate,
                        quotation.extras().stream()
                                .map(QuotedExtra::price)
                                .flatMap(price -> Stream.of(price, paid(price, quotation)))),
                Stream.of(
                        quotation.kitPrice(),
                        quotation.discount(),
                        quotation.net(),
                        quotation.taxAmount(),
                        quotation.total()));
    }

    /** As it stands where a partner's discount is taken off each line. */
    private static BigDecimal paid(BigDecimal price, Quotation quotation) {
        BigDecimal off = price.multiply(quotation.discountPercent()).movePointLeft(2);
        return price.subtract(off).setScale(2, RoundingMode.HALF_UP);
    }

    /** Discount and tax as the sheet's formulas have them. */
    private static Stream<BigDecimal> shares(Quotation quotation) {
        return Stream.concat(
                        Stream.of(quotation.discountPercent()),
                        Stream.ofNullable(quotation.tax()).map(SalesTax::percent))
                .map(percent -> percent.movePointLeft(2));
    }
}
