package boltlore.trades.costing.sheets;

import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import boltlore.trades.costing.path.LeadPath;
import boltlore.trades.costing.path.Slot;
import boltlore.trades.costing.path.Step;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The chain that sets a lead time, in one sentence. */
public final class LeadWords {

    private LeadWords() {}

    /** 'Shipping takes 61 days, because: order and receive DU-90 (49 days), …'. */
    public static String chain(LeadPath path) {
        return path.chain().stream()
                .map(LeadWords::step)
                .collect(Collectors.joining("; then ", "The kit ships after " + path.days() + " days: ", "."));
    }

    /** What halving a part on the chain would gain, the largest gain; or why it would gain nothing. */
    public static String gain(LeadPath path) {
        Map.Entry<PartNumber, Integer> best = path.gains().entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElse(null);
        if (best == null) {
            return "Nothing is ordered or made, so nothing but the workshop's own days could be shortened.";
        }
        return best.getValue() > 0
                ? "Half the days of " + best.getKey() + " would gain " + best.getValue() + " days."
                : "Half the days of one part would gain nothing, as these have no slack either: " + tied(path) + ".";
    }

    private static String tied(LeadPath path) {
        return path.next(Integer.MAX_VALUE).stream()
                .filter(Slot::critical)
                .flatMap(slot -> Stream.ofNullable(slot.activity().what().part()))
                .map(part -> part.number().text())
                .collect(Collectors.joining(", "));
    }

    private static String step(Slot<Step> slot) {
        Part part = slot.activity().what().part();
        String what = slot.activity().what().what().says().toLowerCase(Locale.ROOT);
        String of = part == null ? "" : " " + part.number() + " " + part.name().english();
        return what + of + ", " + slot.activity().days() + " days";
    }
}
