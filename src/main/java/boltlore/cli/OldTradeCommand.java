package boltlore.cli;

import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Mixin;

/** What the trades' commands share: work on each of several orders, write a folder for each, tell of all. */
abstract class OldTradeCommand<T extends WorkedOrder> extends RoomCommand {

    @Mixin
    private OrdersOption orders = new OrdersOption();

    /** Where the orders' folders are written. */
    abstract Path out();

    /** Those of the orders' bills that the trade has work with. */
    abstract Outcome<List<T>> worked(KitsTogether kits);

    /** Said where no order is left to work on. */
    abstract String none();

    abstract String json(List<T> worked, List<Path> written);

    abstract void print(Screen screen, List<T> worked);

    /** Whether one of them must be mended before it goes on. */
    abstract boolean stops(List<T> worked);

    @Override
    int run(Screen screen) {
        HeadStart.forSheets();
        return done(
                screen,
                orders.kits().then(kits -> worked(kits).then(worked -> Outcome.sound(tell(screen, kits, worked)))));
    }

    /** Orders that something stops are told and not worked on. */
    private int tell(Screen screen, KitsTogether kits, List<T> worked) {
        if (!json()) {
            kits.stopped().forEach(kit -> KitText.print(screen, kit));
        }
        if (worked.isEmpty()) {
            screen.line(json() ? "{}" : none());
            return Exit.STOPPED;
        }
        EachWritten written = EachWritten.of(worked, each -> write(out().resolve(each.name()), each.files()));
        if (!written.faults().isEmpty()) {
            return refused(written.faults(), Exit.NOT_WRITTEN);
        }
        told(screen, worked, written.paths());
        return worked.size() == kits.kits().size() && !stops(worked) ? Exit.OK : Exit.STOPPED;
    }

    private void told(Screen screen, List<T> worked, List<Path> written) {
        if (json()) {
            screen.line(json(worked, written));
        } else {
            print(screen, worked);
        }
    }
}
