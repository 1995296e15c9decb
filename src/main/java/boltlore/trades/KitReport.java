package boltlore.trades;

import boltlore.catalogue.Role;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;

/** What the workshop's own reports of one order begin with. */
public final class KitReport {

    private KitReport() {}

    /**
     * Dated as the order is, in the workshop's language; a terminal shows order and base vehicle first.
     *
     * @param beside classes beside which the sheet's words stand in other languages
     */
    public static ReportBuilder begin(KitInWork kit, String file, String title, Class<?>... beside) {
        ReportBuilder report = Report.named(file, title)
                .about("Order " + kit.order().name())
                .by(kit.workshop().name())
                .in(kit.words(beside))
                .glance(new Heading(
                        kit.order().name() + ", " + kit.says(kit.family().says()), Look.TITLE));
        return kit.order().placed() == null ? report : report.dated(kit.order().placed());
    }

    public static String footer(KitInWork kit, String title) {
        return title + ", order " + kit.order().name();
    }

    /** Who it is for, and which vehicle. */
    public static ParticularsBuilder head(KitInWork kit, String name) {
        String era = kit.choices()
                .inRole(Role.ERA)
                .map(value -> "; " + kit.says(value.says()))
                .orElse("");
        return Particulars.named(name)
                .say(
                        "workshop",
                        "Workshop",
                        kit.workshop().name() + ", " + kit.workshop().place())
                .say("order", "Order", kit.order().name() + ", " + kit.order().customer())
                .say("vehicle", "Base vehicle", kit.says(kit.family().says()) + era);
    }
}
