package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.asking.KitFigures;
import boltlore.resolution.Kit;
import boltlore.trades.costing.quote.OrderPricing;
import java.nio.file.Path;

/** An order and what became of it, for the screen: its kit in figures, then its findings, the most serious first. */
final class KitText {

    private KitText() {}

    static void print(Screen screen, OrderKit kit) {
        screen.heading(kit.order().name() + ", " + kit.order().customer());
        findings(screen, kit);
    }

    static void print(Screen screen, KitResult kitted) {
        OrderKit kit = kitted.kit();
        screen.heading(kit.order().name() + ", " + kit.order().customer());
        OrderPricing priced = kitted.priced();
        if (priced != null) {
            figures(screen, priced, kit.issuesSheets());
        }
        kitted.found().forEach(by -> TradeAnswer.found(screen, by));
        if (!kitted.written().isEmpty()) {
            screen.wrapped(2, "sheets in " + folder(kitted));
        } else if (kit.resolution().stops()) {
            screen.wrapped(2, "No sheets written: fix the blocking findings and run again.");
        }
    }

    /** The workbooks are written first, right into the order's folder. */
    private static Path folder(KitResult kitted) {
        Path parent = kitted.written().get(0).getParent();
        return parent == null ? Path.of("") : parent;
    }

    /** That there is no price is a finding as soon as trades work on the kit. */
    private static void figures(Screen screen, OrderPricing priced, boolean worked) {
        Kit kit = priced.costed().bill().resolved().kit();
        screen.wrapped(
                2,
                kit.lines().size() + " lines, " + kit.quantities().size() + " part numbers; "
                        + KitFigures.withCost(priced) + ".");
        if (!worked) {
            KitFigures.noPrice(priced).ifPresent(note -> screen.wrapped(2, note));
        }
    }

    /** What the rules found of an order that becomes no kit. */
    static void findings(Screen screen, OrderKit kit) {
        TradeAnswer.found(screen, KitsTogether.found(kit));
    }
}
