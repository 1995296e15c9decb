package boltlore.trades.cutting.sheets;

import boltlore.catalogue.Part;
import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.cutting.LaidPiece;
import boltlore.trades.cutting.SawnBar;
import java.util.List;

/** Every piece in the order that it is cut, with the mark that it gets. */
final class PiecesTable {

    private static final Column[] COLUMNS = {
        Column.whole("bar", "Bar"),
        Column.whole("place", "Place"),
        Column.decimal("length", "Length over all", 1).in("mm"),
        Column.text("ends", "Ends").in("°").atMost(10),
        Column.text("part", "Part").atMost(16),
        Column.text("revision", "Rev"),
        Column.text("name", "Name").atMost(36),
        Column.text("drawing", "Drawing and issue").atMost(16),
        Column.text("order", "Order").atMost(14),
        Column.whole("number", "Part no. in the order"),
        Column.tick("cut", "Cut"),
        Column.tick("marked", "Marked")
    };

    private PiecesTable() {}

    static TableBuilder of(String material, List<SawnBar> bars) {
        TableBuilder table = Table.named("pieces-" + material).columns(COLUMNS);
        for (SawnBar bar : bars) {
            for (int i = 0; i < bar.pieces().size(); i++) {
                fill(table, bar, i);
            }
        }
        return table;
    }

    private static void fill(TableBuilder table, SawnBar bar, int place) {
        LaidPiece piece = bar.pieces().get(place);
        Part part = piece.set().part();
        table.row()
                .put("bar", bar.number())
                .put("place", place + 1)
                .put("length", piece.cut().lengthMm())
                .put("ends", CutWords.ends(piece.cut()))
                .put("part", part.number().text())
                .put("revision", part.revision())
                .put("name", part.name().english())
                .put("drawing", drawing(part))
                .put("order", piece.set().order())
                .put("number", piece.set().number());
    }

    private static String drawing(Part part) {
        return part.making().drawing() == null
                ? ""
                : part.making().drawing().number() + " "
                        + part.making().drawing().issue();
    }
}
