package boltlore.trades.weighing;

import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import java.util.List;

/** All parts of the kit, the heaviest first: where they sit and what they put on each axle. */
final class PartsPage {

    private PartsPage() {}

    static PageBuilder compose(Weighing weighing, OnAxles onAxles, String footer) {
        int wheelbaseMm = onAxles.chassis().wheelbaseMm();
        List<Added> parts = weighing.heaviest(Limited.WHOLE, wheelbaseMm);
        return Page.named("Parts by mass")
                .landscape()
                .footer(footer)
                .title("Parts of the kit, the heaviest first")
                .note(
                        "Masses are those of the bill, without the film of powder. A station is the position's own where one"
                                + " was measured, else that of its sub-system. A load below 0 lightens that axle: the part sits"
                                + " beyond the other one.")
                .add(MassesPage.whole(
                        spec(wheelbaseMm).of(parts), parts.stream().map(each -> each.on(wheelbaseMm))));
    }

    private static TableSpec<Added> spec(int wheelbaseMm) {
        TableSpec<Added> spec = TableSpec.<Added>named("parts")
                .text("part", "Part", each -> each.item().part().number().text())
                .text(
                        "what",
                        "Description",
                        40,
                        each -> each.item().part().name().english())
                .text(
                        "position",
                        "Position",
                        30,
                        each -> each.item().position().name().text())
                .quantity("quantity", "Quantity", "", each -> each.item().quantity())
                .whole(
                        "station",
                        "Behind front axle",
                        "mm",
                        each -> each.at() == null ? null : each.at().behindFrontMm())
                .text("from", "Station", 14, each -> each.measured() ? "its own" : "sub-system's");
        return MassesPage.loads(spec, each -> each.on(wheelbaseMm));
    }
}
