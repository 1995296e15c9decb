package boltlore.trades.coating.sheets;

import boltlore.trades.coating.BatchRow;
import boltlore.trades.coating.hanging.HangingPlan;
import boltlore.trades.coating.hanging.HungPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What the drawing of a load leaves open. */
final class HangingWords {

    private HangingWords() {}

    static List<String> of(HangingPlan plan) {
        List<String> sentences = new ArrayList<>();
        if (!plan.noRoom().isEmpty()) {
            String numbers = numbers(plan.noRoom());
            sentences.add("Not drawn, because no room was found beside or below the others: " + numbers
                    + ". Hang them where there is room; what does not go in waits for the next load.");
        }
        if (!plan.unsized().isEmpty()) {
            sentences.add("Not drawn, because the size is not known: " + parts(plan.unsized()) + ". Measure them.");
        }
        return sentences;
    }

    /** 'No. 3 (2 pieces), No. 5 (1 piece)'. */
    private static String numbers(List<HungPiece> pieces) {
        return pieces.stream()
                .map(HungPiece::number)
                .distinct()
                .map(number -> "No. " + number + " (" + count(number, pieces) + ")")
                .collect(Collectors.joining(", "));
    }

    private static String count(int number, List<HungPiece> pieces) {
        long count = pieces.stream().filter(piece -> piece.number() == number).count();
        return CoatWords.count(count, "piece", "pieces");
    }

    private static String parts(List<BatchRow> rows) {
        return rows.stream().map(row -> row.part().number().text()).collect(Collectors.joining(", "));
    }
}
