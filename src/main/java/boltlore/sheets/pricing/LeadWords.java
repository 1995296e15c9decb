package boltlore.sheets.pricing;

import boltlore.catalogue.Part;
import boltlore.pricing.path.LeadPath;
import boltlore.pricing.path.Slot;
import boltlore.pricing.path.Step;
import java.util.stream.Collectors;

/** The chain that sets a lead time, in one sentence. */
public final class LeadWords {

    private LeadWords() {}

    /** 'Shipping takes 61 days, because: order and receive DU-90 (49 days), …'. */
    public static String chain(LeadPath path) {
        return path.chain().stream()
                .map(LeadWords::step)
                .collect(Collectors.joining("; then ", "The kit ships after " + path.days() + " days: ", "."));
    }

    private static String step(Slot<Step> slot) {
        Part part = slot.activity().what().part();
        String what = slot.activity().what().what().says().toLowerCase(java.util.Locale.ROOT);
        String of = part == null ? "" : " " + part.number() + " " + part.name().english();
        return what + of + ", " + slot.activity().days() + " days";
    }
}
