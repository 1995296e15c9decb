package boltlore.trades.picking;

import boltlore.report.Column;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import java.util.List;
import java.util.stream.IntStream;

/** Boxes for the numbers of pieces and lots: parts with one number in a table of their own, two in a line. */
final class Serials {

    /** A piece with its number, or two neighbours in one line. */
    private record Serial(PickRow row, int piece) {

        /** The only number of its part. */
        boolean isOne() {
            return PickColumns.numbers(row) == 1;
        }

        boolean isTwo() {
            return piece < PickColumns.numbers(row);
        }

        String says() {
            String of = " of " + PickColumns.numbers(row);
            return PickColumns.isLot(row) ? "lot" : isTwo() ? piece + ", " + (piece + 1) + of : piece + of;
        }
    }

    private static final TableSpec<Serial> SERIALS = TableSpec.<Serial>named("serials")
            .text("part", "Part", serial -> serial.row().part().number().text())
            .text("name", "Name", 30, serial -> serial.row().part().name().english())
            .text("piece", "Piece", Serial::says)
            .box(Column.blank("number", "Serial or lot number").atMost(26))
            .box(Column.blank("next", "Serial number of the second").atMost(26))
            .box(Column.tick("secondCount", "2nd count"));

    /** Of parts with one number. */
    private static final TableSpec<Serial> NUMBERS = TableSpec.<Serial>named("numbers")
            .text("part", "Part", 12, serial -> serial.row().part().number().text())
            .text(
                    "name",
                    "Name",
                    18,
                    serial -> serial.row().part().name().english() + (PickColumns.isLot(serial.row()) ? ", lot" : ""))
            .box(Column.blank("number", "Number").atMost(24))
            .box(Column.tick("secondCount", "2nd"));

    private Serials() {}

    static PageBuilder on(PageBuilder page, List<PickRow> rows) {
        List<Serial> pieces = rows.stream()
                .flatMap(row -> IntStream.iterate(1, piece -> piece <= PickColumns.numbers(row), piece -> piece + 2)
                        .mapToObj(piece -> new Serial(row, piece)))
                .toList();
        List<Serial> alone = pieces.stream().filter(Serial::isOne).toList();
        if (!alone.isEmpty()) {
            page.add(NUMBERS.of(alone).inPairs());
        }
        return alone.size() == pieces.size()
                ? page
                : page.add(SERIALS.of(
                        pieces.stream().filter(piece -> !piece.isOne()).toList()));
    }
}
