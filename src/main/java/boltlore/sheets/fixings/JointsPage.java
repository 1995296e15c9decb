package boltlore.sheets.fixings;

import boltlore.bill.Bill;
import boltlore.catalogue.Workshop;
import boltlore.fixings.KitFixings;
import boltlore.fixings.Remarked;
import boltlore.sheets.Column;
import boltlore.sheets.Page;
import boltlore.sheets.PageBuilder;
import boltlore.sheets.Particulars;
import boltlore.sheets.ParticularsBuilder;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;

/** The first page: every joint with its bolts and torque, and what must be looked at. */
final class JointsPage {

    private static final Column[] REMARKS = {
        Column.text("verdict", "Verdict").atMost(12),
        Column.text("says", "What was found").atMost(110)
    };

    private static final String TABLES =
            "A torque holds for its table, edition, friction and class only: for threads as"
                    + " delivered, neither oiled nor cleaned. A liquid thread lock changes the friction; follow its maker.";

    private JointsPage() {}

    static PageBuilder of(KitFixings fixings, Workshop workshop, String footer) {
        PageBuilder page = Page.named("Joints").landscape().footer(footer);
        page.title("Fixings by joint").add(head(fixings, workshop));
        if (!fixings.remarks().isEmpty()) {
            page.heading("What was found").add(remarks(fixings));
        }
        page.heading("Joints").add(JointsTable.of(fixings, workshop)).note(TABLES);
        FixingCautions.on(page);
        return page;
    }

    private static ParticularsBuilder head(KitFixings fixings, Workshop workshop) {
        Bill bill = fixings.bill();
        long safety = fixings.joints().stream().filter(each -> each.safety()).count();
        return Particulars.named("fixings")
                .say("workshop", "Workshop", workshop.name() + ", " + workshop.place())
                .say("order", "Order", bill.order().name() + ", " + bill.order().customer())
                .say(
                        "vehicle",
                        "Donor vehicle",
                        bill.resolved().choices().family().says().english())
                .say("joints", "Joints", fixings.joints().size() + ", of which " + safety + " to sign for");
    }

    private static TableBuilder remarks(KitFixings fixings) {
        TableBuilder table = Table.named("remarks").columns(REMARKS);
        for (Remarked remark : fixings.remarks()) {
            table.row().put("verdict", remark.verdict().says()).put("says", remark.says());
        }
        return table;
    }
}
