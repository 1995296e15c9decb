package boltlore.trades.weighing.sheets;

import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.trades.weighing.OnAxles;
import boltlore.trades.weighing.Weighing;

/** The parts that weigh most, where they sit and what they put on each axle. */
final class HeaviestPage {

    private HeaviestPage() {}

    static PageBuilder of(Weighing weighing, OnAxles onAxles, String footer) {
        return Page.named("Heaviest parts")
                .landscape()
                .footer(footer)
                .title("Heaviest parts of the kit")
                .add(HeaviestTable.of(weighing, onAxles.chassis().wheelbaseMm()))
                .note(
                        "Masses are those of the bill, without the film of powder. A station is the position's own where one"
                                + " was measured, else that of its sub-system. A load below 0 lightens that axle: the part sits"
                                + " beyond the other one.");
    }
}
