package boltlore.trades.coating;

import boltlore.catalogue.Oven;
import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import java.util.List;

/** Plans rounds one after the other, numbering batches, send-outs, runs and loads through all of them. */
final class RoundPlanner {

    private final Workshop workshop;
    private final Numbers numbers = new Numbers();
    private BoothWays booths;

    RoundPlanner(Workshop workshop) {
        this.workshop = workshop;
        this.booths = BoothWays.of(workshop);
    }

    /** The next round; rows of what is to be coated now, held back ones not among them. */
    Round round(int number, List<Order> orders, List<BatchRow> rows) {
        BatchMaker batches = new BatchMaker(workshop.coating(), numbers);
        batches.add(rows);
        List<Spray> sprays = Sprays.plan(batches.own(), booths, workshop.coating());
        ColourOrder.Found found = ColourOrder.of(sprays, booths);
        List<PowderRun> runs = PowderRuns.group(found.sprays(), booths, RoundPlanner::hung);
        booths = after(booths, runs);
        return new Round(number, orders, batches.own(), batches.out(), numbers.given(runs), found.shortest());
    }

    private static List<OvenLoad> hung(List<Pass> passes, Oven oven) {
        List<BatchRow> rows =
                passes.stream().flatMap(pass -> pass.batch().rows().stream()).toList();
        return OvenLoads.fill(rows, oven);
    }

    /** The booths as the runs leave them. */
    static BoothWays after(BoothWays booths, List<PowderRun> runs) {
        BoothWays after = booths;
        for (PowderRun run : runs) {
            after = after.holding(after.after(after.inBooth(), run.powder()));
        }
        return after;
    }
}
