package boltlore.trades.weighing;

import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.util.List;

/** The heaviest parts of the kit on a page, and all of them for programs: where they sit, what they put on each axle. */
final class PartsPage {

    /** What weighs less is on no one's mind who balances a vehicle. */
    private static final int MOST = 16;

    private final int wheelbaseMm;
    private final List<Added> parts;

    PartsPage(Weighing weighing, OnAxles onAxles) {
        this.wheelbaseMm = onAxles.chassis().wheelbaseMm();
        this.parts = weighing.heaviest(Limited.WHOLE, wheelbaseMm);
    }

    PageBuilder page(String footer) {
        List<Added> heaviest = parts.subList(0, Math.min(MOST, parts.size()));
        TableBuilder table = spec("heaviest").of(heaviest);
        if (parts.size() > MOST) {
            rest(table, parts.subList(MOST, parts.size()));
        }
        return Page.named("Parts by mass")
                .landscape()
                .footer(footer)
                .title("The heaviest parts of the kit")
                .note(
                        "Masses are with the film of powder and with the water that coolant is mixed with. A station is the position's own where one"
                                + " was measured, else that of its sub-system. A load below 0 lightens that axle: the part sits"
                                + " beyond the other one. All parts stand in the CSV and JSON of this sheet.")
                .add(MassesPage.whole(table, parts.stream().map(this::on)));
    }

    private void rest(TableBuilder table, List<Added> others) {
        AxleLoads rest = others.stream().map(this::on).reduce(AxleLoads.NONE, AxleLoads::plus);
        table.row("rest")
                .put("what", "All else of the kit, " + others.size() + (others.size() == 1 ? " item" : " items"))
                .put("mass", rest.totalKg())
                .put("front", rest.frontKg())
                .put("rear", rest.rearKg());
    }

    /** All parts, the heaviest first. */
    TableBuilder all() {
        return spec("parts").of(parts);
    }

    private AxleLoads on(Added part) {
        return part.on(wheelbaseMm);
    }

    /** A concentrate weighs with the water that it is mixed with in the vehicle. */
    private static Cell what(Added each) {
        return Cell.of(each.item().part().name(), each.waterKg().signum() == 0 ? "{0}" : "{0}, mixed with water");
    }

    private TableSpec<Added> spec(String name) {
        TableSpec<Added> spec = TableSpec.<Added>named(name)
                .text("part", "Part", each -> each.item().part().number().text())
                .column(Column.text("what", "Description").atMost(40), PartsPage::what)
                .said("position", "Position", 30, each -> each.item().position().says())
                .quantity("quantity", "Quantity", "", each -> each.item().quantity())
                .whole(
                        "station",
                        "Behind front axle",
                        "mm",
                        each -> each.at() == null ? null : each.at().behindFrontMm())
                .text("station-of", "Station", 14, each -> each.measured() ? "its own" : "sub-system's")
                .code("position-id", each -> each.item().position().name().text())
                .code("sub-system", Added::subSystem);
        return MassesPage.loads(spec, this::on);
    }
}
