package boltlore.cli;

import boltlore.json.JsonOut;
import boltlore.trades.cutting.CutPlan;
import boltlore.trades.cutting.json.CutPlanJson;
import boltlore.trades.cutting.sheets.CutText;
import java.nio.file.Path;
import java.util.Currency;
import java.util.List;

/** A cutting plan as the terminal and as programs get it. */
final class CutAnswer {

    private CutAnswer() {}

    static String text(CutPlan plan, Currency currency, int width) {
        return CutText.of(plan, currency, width).stripTrailing();
    }

    static String json(CutPlan plan, List<Path> written) {
        return CutPlanJson.of(plan)
                .put("written", JsonOut.texts(written))
                .written()
                .stripTrailing();
    }
}
