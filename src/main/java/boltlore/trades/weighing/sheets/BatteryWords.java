package boltlore.trades.weighing.sheets;

import static boltlore.trades.weighing.sheets.Kilograms.kg;
import static boltlore.trades.weighing.sheets.Kilograms.percent;

import boltlore.bill.Item;
import boltlore.trades.weighing.Added;
import boltlore.trades.weighing.AxleLoads;
import boltlore.trades.weighing.OnAxles;
import boltlore.trades.weighing.SubSystemLoad;
import boltlore.trades.weighing.Weighing;
import java.util.Optional;

/** How the battery divides over the axles: the sub-system of what travels as dangerous goods. */
final class BatteryWords {

    private BatteryWords() {}

    static Optional<String> of(Weighing weighing, OnAxles onAxles) {
        return weighing.added().stream()
                .filter(BatteryWords::holdsCells)
                .findFirst()
                .flatMap(cells -> SubSystemLoad.of(weighing, onAxles.chassis().wheelbaseMm()).stream()
                        .filter(load -> load.subSystem().equals(cells.subSystem()))
                        .findFirst())
                .map(BatteryWords::split);
    }

    private static boolean holdsCells(Added added) {
        return added.item().all().map(Item::part).anyMatch(part -> part.transport() != null);
    }

    private static String split(SubSystemLoad load) {
        AxleLoads loads = load.loads();
        return "The battery with its boxes weighs " + kg(loads.totalKg()) + ": " + kg(loads.frontKg()) + " ("
                + percent(loads.frontPercent()) + ") on the front axle, " + kg(loads.rearKg()) + " on the rear axle.";
    }
}
