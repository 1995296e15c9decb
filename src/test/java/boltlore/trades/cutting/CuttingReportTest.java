package boltlore.trades.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Item;
import boltlore.catalogue.Source;
import boltlore.demo.Demo;
import boltlore.report.Approved;
import boltlore.report.Cell;
import boltlore.report.Report;
import boltlore.report.Row;
import boltlore.report.SheetFile;
import boltlore.report.Table;
import boltlore.report.csv.CsvWriter;
import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Png;
import boltlore.report.json.JsonWriter;
import boltlore.report.text.TextWriter;
import boltlore.report.xlsx.XlsxWriter;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.imageio.ImageIO;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The cutting list of the shipped demo orders")
class CuttingReportTest {

    private static final int WIDE = 200;
    private static final String SIDE_TUBE = "s235-tube-40x40x3";

    private static CutPlan plan(String... orders) {
        return plan(List.of(), orders);
    }

    private static CutPlan plan(List<Remnant> remnants, String... orders) {
        return CutPlanner.plan(
                Stream.of(orders).map(Demo::bill).toList(), Demo.catalogue(), new RemnantRack(remnants, List.of()));
    }

    private static Report sheet(CutPlan plan) {
        return CuttingReport.compose(
                plan, plan.findings(Demo.catalogue().workshop().currency()), Demo.catalogue());
    }

    @Test
    void as_text() {
        List<Remnant> rack = List.of(new Remnant("R-7", SIDE_TUBE, new BigDecimal("2400"), "OS-1"));
        Approved.check("trades/cutting/bl-1001", new TextWriter(WIDE).text(sheet(plan(rack, "bl-1001"))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"bl-1001", "bl-1002", "bl-1003", "bl-1004", "bl-1005", "bl-1008", "bl-1010", "bl-2001", "bl-2002"
            })
    void is_proved_to_be_the_cheapest(String order) {
        CutPlan plan = plan(order);
        assertThat(plan.notCut()).isEmpty();
        assertThat(plan.materials()).isNotEmpty().allMatch(MaterialCuts::proven);
    }

    @Test
    void of_all_orders_together_is_proved_to_be_the_cheapest_and_cheaper_than_one_by_one() {
        String[] orders = {"bl-1001", "bl-1003", "bl-1004", "bl-1005", "bl-1008", "bl-2001"};
        CutPlan together = plan(orders);
        assertThat(together.materials()).allMatch(MaterialCuts::proven);
        BigDecimal oneByOne =
                Stream.of(orders).map(order -> cost(plan(order))).reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(cost(together)).isLessThan(oneByOne);
    }

    private static BigDecimal cost(CutPlan plan) {
        return plan.materials().stream().map(MaterialCuts::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Test
    void holds_every_piece_that_the_bill_asks_for() {
        BigDecimal asked = Demo.bill("bl-1001")
                .all()
                .filter(item -> item.part().source() == Source.MAKE)
                .map(CuttingReportTest::pieces)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        int planned = plan("bl-1001").materials().stream()
                .mapToInt(MaterialCuts::pieces)
                .sum();
        assertThat(planned).isEqualTo(asked.intValueExact());
    }

    private static BigDecimal pieces(Item item) {
        int each = item.part().making().cuts().stream()
                .mapToInt(cut -> cut.count())
                .sum();
        return item.quantity().multiply(BigDecimal.valueOf(each));
    }

    @Test
    void holds_back_what_nobody_has_decided_about() {
        CutPlan plan = plan("bl-1002");
        assertThat(plan.onHold()).isNotEmpty();
        assertThat(plan.blanks().stream().map(row -> row.part().number()))
                .doesNotContainAnyElementsOf(
                        plan.onHold().stream().map(held -> held.part().number()).toList());
        assertThat(plan("bl-1003").onHold()).isEmpty();
    }

    @Test
    void a_blank_weighs_no_less_than_the_part_that_is_cut_from_it() {
        assertThat(plan("bl-1001", "bl-2001").blanks())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.eachKg())
                        .isGreaterThanOrEqualTo(row.part().massKg()));
    }

    @Test
    @DisplayName("says each leg of a blank with the bend that follows it, and of a flat one that it is flat")
    void legs_and_bends() throws IOException {
        Table blanks = sheet(plan("bl-1001"))
                .tables()
                .filter(table -> table.name().equals("blanks"))
                .findFirst()
                .orElseThrow();
        List<String> legs = blanks.rows().stream()
                .filter(Row::isPlain)
                .map(row -> ((Cell.Words) row.cells().get(blanks.column("legs"))).text())
                .toList();

        assertThat(legs)
                .contains("25 – 90° – 490 – 90° – 25", "flat")
                .allMatch(says -> says.equals("flat") || says.matches("[0-9.]+( – [0-9.]+° – [0-9.]+)+"));
    }

    @Test
    @DisplayName("shows one picture for each way of cutting in the workbook, as the workbook library and Java read it")
    void pictures() throws IOException {
        CutPlan plan = plan("bl-1001");
        byte[] xlsx = new XlsxWriter().write(sheet(plan)).get(0).content();
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(xlsx))) {
            List<XSSFPicture> pictures = pictures(book.getSheet("Saw"));
            assertThat(pictures)
                    .hasSize(plan.materials().stream()
                            .mapToInt(cuts -> BarPatterns.group(cuts.bars()).size())
                            .sum());
            for (XSSFPicture picture : pictures) {
                BufferedImage image = ImageIO.read(
                        new ByteArrayInputStream(picture.getPictureData().getData()));
                assertThat(image.getWidth()).isEqualTo((int) (Drawing.PORTRAIT_MM * Png.DOTS_PER_MM));
            }
        }
    }

    private static List<XSSFPicture> pictures(XSSFSheet sheet) {
        Iterable<XSSFShape> shapes = sheet.getDrawingPatriarch();
        return StreamSupport.stream(shapes.spliterator(), false)
                .map(XSSFPicture.class::cast)
                .toList();
    }

    @Test
    void keeps_the_drawings_out_of_the_tables_for_programs() {
        Report sheet = sheet(plan("bl-1001"));
        String json = new String(new JsonWriter().write(sheet).get(0).content(), StandardCharsets.UTF_8);
        assertThat(json).contains("\"pieces\"").doesNotContain("<svg");
        for (SheetFile file : new CsvWriter().write(sheet)) {
            assertThat(new String(file.content(), StandardCharsets.UTF_8)).doesNotContain("<svg");
        }
    }

    @Test
    void is_the_same_bytes_each_time() {
        assertThat(new XlsxWriter().write(sheet(plan("bl-1001"))).get(0).content())
                .isEqualTo(new XlsxWriter().write(sheet(plan("bl-1001"))).get(0).content());
    }
}
