package boltlore.trades.weighing.sheets;

import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.trades.weighing.OnAxles;
import boltlore.trades.weighing.Weighing;

/** What comes off, and what each sub-system puts on. */
final class MassesPage {

    private MassesPage() {}

    static PageBuilder of(Weighing weighing, String footer) {
        PageBuilder page = Page.named("Masses").footer(footer).title("What comes off and what goes on");
        if (!weighing.removed().isEmpty()) {
            page.heading("Removed from the donor").add(RemovedTable.of(weighing));
        }
        OnAxles onAxles = weighing.onAxles();
        if (onAxles != null) {
            int wheelbaseMm = onAxles.chassis().wheelbaseMm();
            page.heading("Added by sub-system").add(SubSystemsTable.of(weighing, wheelbaseMm));
            if (!weighing.extras().isEmpty()) {
                page.heading("Added beside the kit").add(ExtrasTable.of(weighing, wheelbaseMm));
            }
        }
        return page;
    }
}
