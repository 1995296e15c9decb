package boltlore.sheets.coating;

import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Coats;
import boltlore.catalogue.Powder;
import boltlore.coating.OvenBatch;
import boltlore.sheets.Column;
import boltlore.sheets.RowBuilder;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import java.math.BigDecimal;
import java.util.List;

/** The coats of a batch from the metal outwards: film, cure window, powder to issue. */
final class CoatsTable {

    private static final Column[] COLUMNS = {
        Column.text("coat", "Coat"),
        Column.text("powder", "Powder"),
        Column.text("says", "Kind").atMost(20),
        Column.whole("min", "Film min").in("µm"),
        Column.whole("target", "Film target").in("µm"),
        Column.whole("max", "Film max").in("µm"),
        Column.whole("metal", "Metal").in("°C"),
        Column.whole("dwell", "Dwell").in("min"),
        Column.decimal("film", "Film on parts", 3).in("kg"),
        Column.decimal("issue", "Powder to issue", 3).in("kg"),
        Column.blank("lot", "Powder lot"),
        Column.blank("issued", "Issued").in("kg"),
        Column.signature("by", "Sprayed by")
    };

    private CoatsTable() {}

    static TableBuilder of(OvenBatch batch, CoatingShop shop) {
        TableBuilder table = Table.named("coats").columns(COLUMNS);
        List<Coats> coats = batch.finish().coats();
        for (int i = 0; i < coats.size(); i++) {
            fill(table.row().put("coat", (i + 1) + " of " + coats.size()), coats.get(i), batch, shop);
        }
        if (coats.size() > 1) {
            total(table, batch, coats);
        }
        return table;
    }

    private static void total(TableBuilder table, OvenBatch batch, List<Coats> coats) {
        table.total("total", "All coats")
                .sum("film", sum(coats.stream().map(batch::filmKg).toList()))
                .sum("issue", sum(coats.stream().map(batch::issueKg).toList()));
    }

    private static void fill(RowBuilder cells, Coats coat, OvenBatch batch, CoatingShop shop) {
        Powder powder = shop.powders().get(coat.powder());
        window(cells, coat)
                .put("powder", coat.powder())
                .put("says", powder == null ? "" : powder.says())
                .put("film", batch.filmKg(coat))
                .put("issue", batch.issueKg(coat));
    }

    private static RowBuilder window(RowBuilder cells, Coats coat) {
        return cells.put("min", coat.filmMinUm())
                .put("target", coat.filmTargetUm())
                .put("max", coat.filmMaxUm())
                .put("metal", coat.cureMetalC())
                .put("dwell", coat.cureMinutes());
    }

    private static BigDecimal sum(List<BigDecimal> all) {
        return all.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
