package boltlore.book.stores;

import boltlore.book.BuiltHappening.Fitted;
import boltlore.book.BuiltHappening.TakenOut;
import boltlore.book.BuiltHappening.Worked;
import boltlore.book.BuiltPart;
import boltlore.book.Held;
import boltlore.book.StockHappening;
import boltlore.book.StockHappening.Issued;
import boltlore.book.db.Stock;
import boltlore.book.db.Writing;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.util.List;

/** What an order has got goes back into the stores, and out of the kit as it is built. */
final class GivenBack {

    private GivenBack() {}

    /** Under which line of the kit it was taken. */
    static String key(Issued issued) {
        return Stock.key(
                issued.instead().isEmpty() ? issued.held().part() : issued.instead(),
                issued.held().finish());
    }

    /**
     * Lays it into the stores again.
     *
     * @param bin that it goes into; empty for the one that it came from
     */
    static void of(Writing writing, KitInWork kit, Issued issued, String bin, String reason) {
        Held held = issued.held();
        String wanted = issued.instead().isEmpty() ? held.part() : issued.instead();
        takeOut(writing, issued, reason);
        writing.add(
                new Worked(
                        issued.order(),
                        wanted,
                        PickDesk.revision(kit, wanted),
                        held.finish(),
                        PickDesk.PICKED,
                        issued.quantity().negate()),
                "");
        writing.add(
                new StockHappening.Returned(
                        bin.isEmpty() ? held : held.in(bin), issued.quantity(), issued.order(), issued.instead()),
                reason);
    }

    /** The piece is in the kit no more; of a lot what stays in is written down again. */
    private static void takeOut(Writing writing, Issued issued, String reason) {
        Held held = issued.held();
        BigDecimal left = issued.quantity();
        List<BuiltPart> fitted = writing.asBuilt().parts(issued.order());
        for (int i = fitted.size() - 1; i >= 0 && left.signum() > 0; i--) {
            BuiltPart part = fitted.get(i);
            boolean same = held.serial().isEmpty()
                    ? !held.lot().isEmpty() && part.lot().equals(held.lot())
                    : part.serial().equals(held.serial());
            if (same && part.out() == 0 && part.part().equals(held.part())) {
                writing.add(new TakenOut(issued.order(), part.entry()), reason);
                BigDecimal stays = part.quantity().subtract(left);
                left = left.subtract(part.quantity());
                if (stays.signum() > 0) {
                    writing.add(
                            new Fitted(
                                    issued.order(),
                                    part.part(),
                                    part.revision(),
                                    stays,
                                    part.serial(),
                                    part.lot(),
                                    part.heat()),
                            reason);
                }
            }
        }
    }
}
