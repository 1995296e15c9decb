package boltlore.sheets.coating;

import boltlore.coating.BatchRow;
import boltlore.coating.LoadSize;
import boltlore.coating.OvenBatch;
import boltlore.coating.OvenLoad;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** What is worth saying about a batch's oven loads. */
final class LoadWords {

    private LoadWords() {}

    /** What the oven takes at once, and how many loads these pieces need. */
    static String limits(OvenBatch batch) {
        LoadSize limits = LoadSize.limits(batch.oven());
        String hanging = CoatWords.plain(LoadSize.HANGING_KG) + " kg a hang point";
        BigDecimal litres = limits.litres().setScale(0, RoundingMode.HALF_UP);
        String fill = CoatWords.plain(batch.oven().fillPercent()) + " % of its inside";
        return batch.oven().says() + " takes " + CoatWords.plain(limits.areaM2()) + " m², "
                + CoatWords.plain(limits.kg()) + " kg with hanging (" + hanging + "), " + limits.hooks() + " hooks and "
                + litres + " l of hung parts (" + fill + "). These pieces need at least "
                + CoatWords.count(batch.leastLoads(), "load", "loads") + "; planned: "
                + batch.loads().size() + ".";
    }

    /** A word where thin and thick sections share a load, or empty. */
    static String mixed(OvenLoad load, int number) {
        if (!load.mixesSections()) {
            return "";
        }
        BatchRow thin = load.thinnest();
        BatchRow thick = load.thickest();
        String thinMm = CoatWords.plain(thin.coat().thinnestMm()) + " mm";
        String thickMm = CoatWords.plain(thick.coat().thickestMm()) + " mm";
        return "Load " + number + ": " + thinMm + " (" + thin.part().number() + ") and " + thickMm + " ("
                + thick.part().number() + ") do not reach metal temperature together. Put the probe on the "
                + thickMm + " and count the minutes from there; look at the thin ones for over-bake.";
    }
}
