package boltlore.trades.fixings;

import boltlore.bill.Item;
import boltlore.catalogue.Stage;
import boltlore.report.PageBuilder;
import boltlore.report.Phrases;
import boltlore.report.TableSpec;
import boltlore.trades.KitInWork;
import boltlore.trades.picking.OnHold;
import boltlore.trades.picking.PickingTrade;
import java.util.Comparator;
import java.util.List;

/** On the card of its stage, what is not fitted until the order decides, counted as the contents list counts it. */
record HeldParts(KitInWork kit, Phrases phrases) {

    void on(PageBuilder page, Stage stage) {
        List<OnHold> here = of(stage);
        if (here.isEmpty()) {
            return;
        }
        String language = kit.order().language();
        page.heading(phrases.say("held"))
                .note("held", phrases.say("heldSays"))
                .add(TableSpec.<OnHold>named("held")
                        .text(
                                "part",
                                phrases.say("part"),
                                14,
                                held -> held.part().number().text())
                        .text(
                                "name",
                                phrases.say("name"),
                                50,
                                held -> held.part().name().in(language))
                        .text(
                                "finish",
                                phrases.say("finish"),
                                24,
                                held -> kit.catalogue().finishSays(held.finish(), language))
                        .quantity("quantity", phrases.say("quantity"), "", OnHold::quantity)
                        .text(
                                "unit",
                                phrases.say("unit"),
                                8,
                                held -> phrases.unit(held.part().unit(), held.quantity()))
                        .of(here));
    }

    List<OnHold> of(Stage stage) {
        return PickingTrade.list(kit).onHold().stream()
                .filter(held -> stage(held).equals(stage.name()))
                .toList();
    }

    /** That of the first bracket that it hangs on: each stands on one card, so that no count is told twice. */
    private String stage(OnHold held) {
        return kit.bill()
                .all()
                .filter(item -> held.brackets().contains(item.line()) || isThePart(item, held))
                .min(Comparator.comparing(item -> !held.brackets().contains(item.line())))
                .map(Item::stage)
                .orElse("");
    }

    private static boolean isThePart(Item item, OnHold held) {
        return item.part().number().equals(held.part().number());
    }
}
