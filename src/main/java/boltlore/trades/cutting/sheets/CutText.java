package boltlore.trades.cutting.sheets;

import boltlore.report.Picture;
import boltlore.report.text.TextWriter;
import boltlore.trades.cutting.CutPlan;
import boltlore.trades.cutting.MaterialCuts;
import java.util.Currency;

/** The cutting list in a few lines for a terminal: each way of cutting in words, then all materials at a glance. */
public final class CutText {

    private CutText() {}

    /**
     * As lines of words and one table.
     *
     * @param width characters in a line
     */
    public static String of(CutPlan plan, Currency currency, int width) {
        if (plan.materials().isEmpty()) {
            return "Nothing in these orders is sawn.\n";
        }
        TextWriter writer = new TextWriter(width);
        StringBuilder text = new StringBuilder();
        for (MaterialCuts cuts : plan.materials()) {
            text.append(cuts.material().says()).append('\n');
            BarPatterns.of(cuts.bars())
                    .forEach(pattern -> text.append(writer.text(new Picture(BarDrawing.of(pattern, cuts)))));
            text.append('\n');
        }
        return text.append(writer.text(
                        MaterialsTable.of(plan.materials(), currency).build()))
                .toString();
    }
}
