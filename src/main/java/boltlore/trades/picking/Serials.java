package boltlore.trades.picking;

import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.picking.Numbered.Line;
import java.util.List;

/** Boxes for the numbers of pieces and lots: parts with one number in a table of their own, two in a line. */
final class Serials {

    private static final TableSpec<Line> SERIALS = TableSpec.<Line>named("serials")
            .text("part", "Part", line -> line.of().part().number().text())
            .said("name", "Name", 30, line -> line.of().part().name())
            .text("piece", "Piece", Serials::says)
            .box(Column.blank("number", "Serial or lot number").atMost(26))
            .box(Column.blank("next", "Serial number of the second").atMost(26))
            .box(Column.tick("secondCount", "2nd count"));

    /** Of parts with one number. */
    private static final TableSpec<Line> NUMBERS = TableSpec.<Line>named("numbers")
            .text("part", "Part", 12, line -> line.of().part().number().text())
            .column(
                    Column.text("name", "Name").atMost(18),
                    line -> Cell.of(line.of().part().name(), line.of().isLot() ? "{0}, lot" : "{0}"))
            .box(Column.blank("number", "Number").atMost(24))
            .box(Column.tick("secondCount", "2nd"));

    private Serials() {}

    private static String says(Line line) {
        return line.pieces() + " of " + line.of().numbers();
    }

    static PageBuilder on(PageBuilder page, List<Numbered> parts) {
        List<Line> lines = parts.stream().flatMap(Numbered::lines).toList();
        List<Line> alone = lines.stream().filter(Line::isOne).toList();
        if (!alone.isEmpty()) {
            page.add(NUMBERS.of(alone).inPairs());
        }
        return alone.size() == lines.size()
                ? page
                : page.add(
                        SERIALS.of(lines.stream().filter(line -> !line.isOne()).toList()));
    }
}
