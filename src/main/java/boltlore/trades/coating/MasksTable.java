package boltlore.trades.coating;

import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Mask;
import boltlore.report.Column;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;

/** Masks by kind and size, to lay out before spraying and to count off again. */
final class MasksTable {

    private MasksTable() {}

    /** For what goes out masked; no rows where nothing is masked. */
    static TableBuilder compose(SendOut sendOut, CoatingShop shop) {
        List<BareSpots> masked =
                BareSpots.of(sendOut.rows()).stream().filter(BareSpots::masked).toList();
        TableBuilder table = byHand(MasksTable.<BareSpots>what(shop, spots -> spots))
                .of(masked)
                .about("send-out", sendOut.number());
        return totalled(table, masked);
    }

    /** For one run, with the fewest that will do where masks go round from load to load. */
    static TableBuilder compose(PowderRun run, List<MasksToFetch> masks, CoatingShop shop) {
        TableBuilder table = byHand(what(shop, MasksToFetch::spots)
                        .whole("load", "Most in one load", "", MasksToFetch::mostInOneLoad))
                .of(masks)
                .about("run", run.number());
        return totalled(table, masks.stream().map(MasksToFetch::spots).toList());
    }

    private static <R> TableSpec<R> what(CoatingShop shop, Function<R, BareSpots> spots) {
        return TableSpec.<R>named("masks")
                .text("kind", "Covers", row -> kind(spots.apply(row).kind()))
                .text("size", "Size", row -> size(spots.apply(row)))
                .text(
                        "mask",
                        "Mask",
                        44,
                        row -> spots.apply(row)
                                .mask(shop)
                                .map(Mask::says)
                                .orElse("none of that size is held: ask before spraying"))
                .whole("masks", "Masks", "", row -> spots.apply(row).count());
    }

    private static <R> TableSpec<R> byHand(TableSpec<R> table) {
        return table.box(Column.tick("laid-out", "Issued"))
                .box(Column.tick("off", "Removed"))
                .box(Column.tick("lost", "Missing"));
    }

    private static TableBuilder totalled(TableBuilder table, List<BareSpots> masks) {
        int all = masks.stream().mapToInt(BareSpots::count).sum();
        table.total("total", "All masks").sum("masks", BigDecimal.valueOf(all));
        return table;
    }

    private static String kind(Feature.Kind kind) {
        return switch (kind) {
            case THREAD -> "Thread";
            case EARTH -> "Earth point";
            case FACE -> "Face";
        };
    }

    private static String size(BareSpots spots) {
        return spots.kind() == Feature.Kind.THREAD ? spots.size() : spots.size() + " mm";
    }
}
