package boltlore.desk.sheets;

import boltlore.answers.OrderKit;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.orders.OrderDesk;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.report.Report;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeResult;
import boltlore.trades.costing.quote.QuoteOptions;
import boltlore.trades.orders.KitTrades;
import boltlore.trades.orders.OrderSheets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** All sheets of orders, kept for the few that were looked at last. */
final class KitSheets {

    private static final int MOST_KEPT = 6;

    private final Workshop workshop;
    private final Kits kits;
    private final Map<Wanted, List<Report>> kept = new LinkedHashMap<>(MOST_KEPT, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Wanted, List<Report>> eldest) {
            return size() > MOST_KEPT;
        }
    };

    KitSheets(Workshop workshop) {
        this.workshop = workshop;
        this.kits = new Kits(workshop);
    }

    /** What the sheets come from: an order that stands otherwise has other ones. */
    private record Wanted(OrderStanding standing, LocalDate today) {}

    void ahead(LocalDate today) {
        List<OrderState> owed = OrderState.ALL.stream()
                .filter(state -> state.owed() || state == OrderState.QUOTED)
                .toList();
        workshop.book().read(reading -> reading.orders().in(owed, MOST_KEPT)).stream()
                .map(OrderStanding::name)
                .forEach(order -> of(order, today));
    }

    /** All sheets of an order, or what keeps it from having any. */
    Outcome<List<Report>> of(String order, LocalDate today) {
        Outcome<OrderStanding> found = workshop.book().read(reading -> OrderDesk.standing(reading, order));
        return found.then(standing -> {
            Wanted wanted = new Wanted(standing, today);
            List<Report> known;
            synchronized (kept) {
                known = kept.get(wanted);
            }
            return known != null ? Outcome.sound(known) : made(wanted);
        });
    }

    private Outcome<List<Report>> made(Wanted wanted) {
        return kits.of(wanted.standing(), wanted.today()).then(kit -> {
            List<Report> reports = reports(kit);
            synchronized (kept) {
                kept.put(wanted, reports);
            }
            return Outcome.sound(reports);
        });
    }

    /** In the order of the trades; bill and contents list come first. */
    private static List<Report> reports(KitInWork kit) {
        KitTrades trades =
                KitTrades.of(kit, OrderKit.misfits(kit.plan(), kit.bill().resolved()));
        List<Supplier<Report>> all = new ArrayList<>(
                OrderSheets.prepare(kit, QuoteOptions.pricing(kit, TradeOption.Given.NONE), trades, true));
        all.add(OrderSheets.contents(kit, trades));
        trades.results().values().stream()
                .flatMap(List::stream)
                .flatMap(result -> result.sheets().stream())
                .map(TradeResult.Sheet::report)
                .forEach(all::add);
        return all.stream().map(Supplier::get).toList();
    }
}
