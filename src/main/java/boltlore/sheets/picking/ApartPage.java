package boltlore.sheets.picking;

import boltlore.picking.PickingList;
import boltlore.sheets.Page;
import boltlore.sheets.PageBuilder;

/** What does not lie on the walk: from coating, outside the kit, held back. */
final class ApartPage {

    private static final String OUTSIDE =
            "The order asks for these beside the kit. That they fit, and fit together, is not proved.";

    private static final String HELD_BACK = "These brackets carry nothing in this kit, and nobody has said yet whether"
            + " they ship. The quantities come on top of those in the lists above.";

    private ApartPage() {}

    static boolean isNeeded(PickingList list) {
        return !list.fromCoating().isEmpty()
                || !list.extras().isEmpty()
                || !list.heldBack().isEmpty();
    }

    static PageBuilder of(PickingList list, Head head, FinishNames finishes, Amounts amounts) {
        PageBuilder page = Page.named("Not from bins").landscape().footer(head.footer("not from bins"));
        page.title("Not from bins, " + head.order().name());
        if (!list.fromCoating().isEmpty()) {
            page.heading("From coating").add(CoatingTable.of(list.fromCoating(), finishes, amounts));
        }
        if (!list.extras().isEmpty()) {
            page.heading("Outside the universal kit").note(OUTSIDE).add(ExtrasTable.of(list.extras(), amounts));
        }
        if (!list.heldBack().isEmpty()) {
            page.heading("Held back")
                    .caution("Do not pick until decided", HELD_BACK)
                    .add(HeldBackTable.of(list.heldBack(), finishes, amounts));
        }
        return page.signatures("Picked by", "Second count by");
    }
}
