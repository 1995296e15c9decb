package boltlore.trades.coating.sheets;

import boltlore.measure.Digits;
import boltlore.trades.coating.BatchRow;
import boltlore.trades.coating.CureQueue;
import boltlore.trades.coating.LoadSize;
import boltlore.trades.coating.OvenLoad;
import boltlore.trades.coating.PowderRun;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** What is worth saying about oven loads. */
final class LoadWords {

    private static final int MIXED_ONE_BY_ONE = 4;

    private LoadWords() {}

    /** '180 °C metal, 15 min, in Box oven, gas'. */
    static String window(CureQueue queue) {
        return queue.cureMetalC() + " °C metal, " + queue.minutes() + " min, in "
                + queue.oven().says();
    }

    /** What the oven takes at once, and how many loads these pieces need. */
    static String limits(CureQueue queue) {
        LoadSize limits = LoadSize.limits(queue.oven());
        String hanging = Digits.plain(LoadSize.HANGING_KG) + " kg a hang point";
        BigDecimal litres = limits.litres().setScale(0, RoundingMode.HALF_UP);
        String fill = Digits.plain(queue.oven().fillPercent()) + " % of its inside";
        return queue.oven().says() + " takes " + Digits.plain(limits.areaM2()) + " m², "
                + Digits.plain(limits.kg()) + " kg with hanging (" + hanging + "), " + limits.hooks() + " hooks and "
                + litres + " l of hung parts (" + fill + ")" + sections(queue) + ". At " + queue.cureMetalC() + " °C, "
                + queue.minutes() + " min these pieces need at least "
                + CoatWords.count(queue.leastLoads(), "load", "loads") + "; planned: "
                + queue.loads().size() + ". " + gap(queue);
    }

    private static String sections(CureQueue queue) {
        BigDecimal ratio = queue.oven().sectionRatio();
        return ratio == null
                ? ""
                : "; pieces whose thickest sections differ by more than " + Digits.plain(ratio) + " times hang apart";
    }

    private static String gap(CureQueue queue) {
        return queue.loads().size() == queue.leastLoads()
                ? "No plan has fewer."
                : "The best plan known; fewer are not ruled out.";
    }

    /** Words where thin and thick sections share a load, one for each or one for all. */
    static List<String> mixed(PowderRun run) {
        List<OvenLoad> mixed = run.loads().filter(OvenLoad::mixesSections).toList();
        if (mixed.size() <= MIXED_ONE_BY_ONE) {
            return mixed.stream().map(LoadWords::mixed).toList();
        }
        String loads = mixed.stream().map(load -> String.valueOf(load.number())).collect(Collectors.joining(", "));
        return List.of(
                "Loads " + loads + ": thin and thick sections do not reach metal temperature together. Put the probe"
                        + " where the table says and count the minutes from there; look at the thin ones for over-bake.");
    }

    private static String mixed(OvenLoad load) {
        BatchRow thin = load.thinnest();
        BatchRow thick = load.thickest();
        String thinMm = Digits.plain(thin.coat().thinnestMm()) + " mm";
        String thickMm = Digits.plain(thick.coat().thickestMm()) + " mm";
        return "Load " + load.number() + ": " + thinMm + " (" + thin.part().number() + ") and " + thickMm + " ("
                + thick.part().number() + ") do not reach metal temperature together. Put the probe on the "
                + thickMm + " and count the minutes from there; look at the thin ones for over-bake.";
    }

    /** 'PV-CR-1, 8 mm'. */
    static String probe(OvenLoad load) {
        BatchRow thick = load.thickest();
        return thick.part().number() + ", " + Digits.plain(thick.coat().thickestMm()) + " mm";
    }
}
