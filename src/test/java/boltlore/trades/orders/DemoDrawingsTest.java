package boltlore.trades.orders;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.demo.Demo;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.report.Page;
import boltlore.report.Picture;
import boltlore.report.Report;
import boltlore.report.drawing.Clearances;
import boltlore.report.drawing.Drawing;
import boltlore.report.xlsx.PrintedPicture;
import boltlore.report.xlsx.XlsxWriter;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.coating.CoatingTrade;
import boltlore.trades.cutting.CuttingTrade;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Drawings of the demo orders' sheets")
class DemoDrawingsTest {

    private static Stream<Report> workbooks(String order) {
        KitInWork kit = Demo.kit(order);
        return KitTrades.of(kit, Findings.NONE).results().values().stream()
                .flatMap(List::stream)
                .flatMap(result -> result.sheets().stream())
                .map(sheet -> sheet.report().get());
    }

    private static Stream<Drawing> drawings(Report report) {
        return report.pages().stream().flatMap(DemoDrawingsTest::drawings);
    }

    private static Stream<Drawing> drawings(Page page) {
        return page.blocks().stream()
                .filter(Picture.class::isInstance)
                .map(Picture.class::cast)
                .map(Picture::drawing);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bl-1001", "bl-1002", "bl-1004", "bl-1005", "bl-1008", "bl-1010", "bl-1011", "bl-1012", "bl-1013",
                "bl-2001", "bl-2002", "bl-2003"
            })
    void nothing_is_cut_off_or_covered(String order) {
        List<Drawing> drawings =
                workbooks(order).flatMap(DemoDrawingsTest::drawings).toList();
        assertThat(drawings).hasSizeGreaterThan(5).allSatisfy(Clearances::assertLegible);
    }

    @Test
    void nothing_is_cut_off_or_covered_where_many_orders_are_coated_and_sawn_at_once() {
        List<KitInWork> kits = Stream.of("bl-1001", "bl-1002", "bl-1004", "bl-1010", "bl-1011", "bl-2001", "bl-2002")
                .map(Demo::kit)
                .toList();
        Outcome<List<TradeResult>> cut = new CuttingTrade().work(kits, Given.NONE);
        List<Drawing> drawings = Stream.of(
                        ((Outcome.Sound<List<TradeResult>>) new CoatingTrade().work(kits, Given.NONE))
                                .value()
                                .get(0)
                                .sheets()
                                .get(0)
                                .report()
                                .get(),
                        ((Outcome.Sound<List<TradeResult>>) cut)
                                .value()
                                .get(0)
                                .sheets()
                                .get(0)
                                .report()
                                .get())
                .flatMap(DemoDrawingsTest::drawings)
                .toList();
        assertThat(drawings).hasSizeGreaterThan(30).allSatisfy(Clearances::assertLegible);
    }

    @Test
    @DisplayName("are printed whole and at their own size, by LibreOffice with the typeface that stands in for Arial")
    void printed_whole(@TempDir Path folder) throws IOException, InterruptedException {
        Map<String, Long> drawn = new TreeMap<>();
        for (String order : List.of("bl-2001", "bl-1011")) {
            for (Report report : workbooks(order).toList()) {
                String file = order + "-" + report.file();
                if (drawings(report).findAny().isPresent()) {
                    drawn.put(file, drawings(report).count());
                    Files.write(
                            folder.resolve(file + ".xlsx"),
                            new XlsxWriter().write(report).get(0).content());
                }
            }
        }
        Map<String, List<PrintedPicture>> printed = PrintedPicture.all(folder);
        assertThat(drawn).hasSizeGreaterThan(10);
        drawn.forEach((file, count) -> assertThat(printed.get(file))
                .as(file)
                .hasSize(count.intValue())
                .allSatisfy(PrintedPicture::assertWhole));
    }
}
