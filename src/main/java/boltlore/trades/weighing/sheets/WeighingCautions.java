package boltlore.trades.weighing.sheets;

import boltlore.report.PageBuilder;
import java.util.List;

/** What can hurt while vehicles are lifted and weighed, and what the figures are not good for. */
final class WeighingCautions {

    private static final String FIGURES =
            "These are computed figures. The finished vehicle is weighed axle by axle on a verified weighbridge, on level"
                    + " ground, and what it shows decides; approval and registration are for your local authority.";

    private static final List<String> AT_WORK = List.of(
            "Lift only at the donor maker's points with gear rated for the load, set the vehicle on axle stands before"
                    + " anyone goes under it, and mind that it tips as engine, gearbox or battery come out: chock the"
                    + " wheels, strap or ballast the light end. Heavy parts take a hoist, or two people.",
            "Springs, dampers, brakes, tyres and headlamps must suit the new loads: a competent person decides by your"
                    + " local codes. Battery boxes are lifted isolated, by people trained for high voltage.");

    private static final String LEAD = "Caution";

    private WeighingCautions() {}

    static void on(PageBuilder page) {
        figures(page);
        AT_WORK.forEach(says -> page.caution(LEAD, says));
    }

    /** What the figures are good for. */
    static void figures(PageBuilder page) {
        page.caution(LEAD, FIGURES);
    }
}
