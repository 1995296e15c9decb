package boltlore.trades.weighing.sheets;

import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.trades.weighing.OnAxles;
import boltlore.trades.weighing.Weighing;

/** The first page: the axle loads before and after, what was found, what is missing. */
final class StatementPage {

    private StatementPage() {}

    static PageBuilder of(Weighing weighing, HeadOfSheet head, String footer) {
        PageBuilder page = Page.named("Weights").footer(footer);
        page.title("Weight statement").add(head.particulars());
        OnAxles onAxles = weighing.onAxles();
        if (onAxles != null) {
            page.heading("Axle loads").add(StandingsTable.of(onAxles));
            page.picture(SideView.of(onAxles));
        }
        page.heading("What was found").add(FoundTable.of(weighing));
        WeighingCautions.figures(page);
        return page.signatures("Looked at by");
    }
}
