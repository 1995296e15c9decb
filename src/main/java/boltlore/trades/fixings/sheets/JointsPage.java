package boltlore.trades.fixings.sheets;

import boltlore.bill.Bill;
import boltlore.catalogue.Workshop;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.fixings.KitFixings;
import boltlore.trades.fixings.Remarked;

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
