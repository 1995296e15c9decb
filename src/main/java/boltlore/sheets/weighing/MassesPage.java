package boltlore.sheets.weighing;

import boltlore.sheets.Page;
import boltlore.sheets.PageBuilder;
import boltlore.weighing.OnAxles;
import boltlore.weighing.Weighing;

/** What comes off, what goes on and where, and boxes for the weighbridge. */
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
            page.heading("Heaviest parts of the kit").add(HeaviestTable.of(weighing, wheelbaseMm));
            page.note("Masses are those of the bill, without the film of powder. A station is the position's own where"
                    + " one was measured, else that of its sub-system.");
        }
        return page;
    }
}
