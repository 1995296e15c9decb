package boltlore.trades.bill.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.Cell;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.Row;
import boltlore.report.Table;
import boltlore.report.text.TextWriter;
import boltlore.trades.picking.BagRow;
import boltlore.trades.picking.PickingList;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The contents list")
class ContentsTest {

    @Test
    @DisplayName("holds everything that is packed, once, by fit stage in fitting order")
    void everything() {
        DemoKit kit = DemoKit.of("BL-1001");
        List<BagRow> packed = PickingList.of(kit.plan(), kit.bill()).bags().stream()
                .flatMap(page -> page.rows().stream())
                .toList();

        assertThat(column(contents(kit), "part"))
                .containsExactlyElementsOf(
                        packed.stream().map(row -> row.part().number().text()).toList());
        assertThat(contents(kit).rows().stream()
                        .filter(row -> row.kind() == Row.RowKind.GROUP)
                        .map(row -> row.words().replaceAll(" · .*", ""))
                        .distinct())
                .containsExactly(
                        "Rear bay",
                        "Under the floor",
                        "Front bay",
                        "Body side",
                        "Cabin",
                        "Final assembly and documents");
    }

    @Test
    @DisplayName("holds no number but quantities and spares")
    void only_quantities() {
        DemoKit kit = DemoKit.of("BL-1010");
        List<BigDecimal> allowed = Stream.concat(
                        PickingList.of(kit.plan(), kit.bill()).bags().stream()
                                .flatMap(page -> page.rows().stream())
                                .flatMap(row -> Stream.of(row.quantity(), row.spares())),
                        kit.bill().order().extra().stream().map(extra -> extra.quantity()))
                .toList();

        assertThat(numbers(kit.contents()))
                .isNotEmpty()
                .allMatch(number -> allowed.stream().anyMatch(each -> each.compareTo(number) == 0));
    }

    @Test
    @DisplayName("speaks the order's language from heading to caution")
    void german() {
        String text = text(DemoKit.of("BL-1011"));

        assertThat(text)
                .contains(
                        "Inhalt des Bausatzes",
                        "Linkslenker",
                        "Antriebseinheit mit Umrichter",
                        "Heckraum",
                        "Kühlung, Front")
                .contains("Vorsicht: Hochvolt ist lebensgefährlich")
                .doesNotContain("Caution", "Rear bay", "Left-hand drive", "front-cooling", "crate-drive");
    }

    @Test
    @DisplayName("speaks English where the order does")
    void english() {
        assertThat(text(DemoKit.of("BL-1001")))
                .contains("Contents of the kit", "Rear bay", "Caution: High voltage can kill")
                .doesNotContain("Vorsicht");
    }

    @Test
    @DisplayName("keeps undecided brackets out of the bags and says so")
    void undecided() {
        DemoKit kit = DemoKit.of("BL-1002");

        assertThat(column(contents(kit), "part")).doesNotContain("PV-KB");
        assertThat(text(kit)).contains("Not packed yet", "Compressor bracket");
    }

    @Test
    @DisplayName("says nothing of undecided brackets where all is decided")
    void decided() {
        assertThat(text(DemoKit.of("BL-1003"))).doesNotContain("Not packed yet", "Compressor bracket");
    }

    @Test
    @DisplayName("names extras, and who brings them, but not what they cost")
    void extras() {
        assertThat(text(DemoKit.of("BL-1010")))
                .contains("Roof rack feet, aluminium, drilled", "Load floor, birch plywood 18 mm", "you")
                .doesNotContain("32.00", "18.50", "128.00");
    }

    private static String text(DemoKit kit) {
        return new TextWriter(160).text(kit.contents());
    }

    private static Table contents(DemoKit kit) {
        return kit.contents()
                .pages()
                .get(0)
                .tables()
                .filter(table -> table.name().equals("contents"))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> column(Table table, String column) {
        return table.rows().stream()
                .filter(Row::isPlain)
                .map(row -> ((Cell.Words) row.cells().get(table.column(column))).text())
                .toList();
    }

    private static List<BigDecimal> numbers(Report report) {
        return report.pages().stream()
                .flatMap(Page::tables)
                .flatMap(table -> table.rows().stream())
                .flatMap(row -> row.cells().stream())
                .filter(cell -> cell instanceof Cell.Figure || cell instanceof Cell.Worked)
                .map(cell -> cell instanceof Cell.Figure figure ? figure.value() : ((Cell.Worked) cell).result())
                .toList();
    }
}
