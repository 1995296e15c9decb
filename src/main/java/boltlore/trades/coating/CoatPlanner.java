package boltlore.trades.coating;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingShop;
import boltlore.order.Order;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Plans the coating of several orders together: rounds, batches, powder runs, oven loads, send-outs. */
public final class CoatPlanner {

    private static final String SHEET = "coating";

    private final Catalogue catalogue;
    private final Again again;
    private final RoundPlanner planner;

    private CoatPlanner(Catalogue catalogue, Again again) {
        this.catalogue = catalogue;
        this.again = again;
        this.planner = new RoundPlanner(catalogue.workshop());
    }

    /** Plans the bills, whose orders may be given in any order; each order at most once. */
    public static CoatPlan plan(Collection<Bill> bills, Catalogue catalogue) {
        return plan(bills, catalogue, Again.NONE);
    }

    /** Plans only those pieces of the bills that are to be coated again, or all where none is. */
    static CoatPlan plan(Collection<Bill> bills, Catalogue catalogue, Again again) {
        return new CoatPlanner(catalogue, again).plan(bills);
    }

    /** The last working day on which an order needs its parts coated and in store, or null where it has no date. */
    public static @Nullable LocalDate needBy(Order order, int assemblyDays) {
        return order.due() == null ? null : WorkDays.onOrBefore(order.due().minusDays(assemblyDays));
    }

    private CoatPlan plan(Collection<Bill> bills) {
        List<Bill> earliestFirst =
                bills.stream().filter(this::isCoated).sorted(byNeed()).toList();
        List<Order> orders = earliestFirst.stream().map(Bill::order).toList();
        List<Round> rounds = new ArrayList<>();
        List<BatchRow> onHold = new ArrayList<>();
        for (List<Bill> together : inRounds(earliestFirst)) {
            List<BatchRow> rows = again.of(new RowCollector(catalogue).rows(together));
            rows.stream().filter(row -> row.status() == CoatingStatus.HELD_BACK).forEach(onHold::add);
            rounds.add(planner.round(
                    rounds.size() + 1, together.stream().map(Bill::order).toList(), now(rows)));
        }
        return new CoatPlan(orders, List.copyOf(rounds), BatchRow.merged(onHold), cautions(earliestFirst));
    }

    /** Orders of which nothing is coated again take no part in a plan of what is. */
    private boolean isCoated(Bill bill) {
        return again.isEmpty()
                || !again.of(new RowCollector(catalogue).rows(List.of(bill))).isEmpty();
    }

    static List<BatchRow> now(List<BatchRow> rows) {
        return rows.stream()
                .filter(row -> row.status() != CoatingStatus.HELD_BACK)
                .toList();
    }

    /** A round ends before the first order that is needed too long after its first; orders without a date go with the last. */
    private List<List<Bill>> inRounds(List<Bill> earliestFirst) {
        List<List<Bill>> rounds = new ArrayList<>();
        LocalDate first = null;
        for (Bill bill : earliestFirst) {
            LocalDate need = needBy(bill.order(), catalogue.workshop().assemblyDays());
            if (rounds.isEmpty() || beyond(first, need, catalogue.workshop().coating())) {
                rounds.add(new ArrayList<>());
                first = need;
            }
            rounds.get(rounds.size() - 1).add(bill);
        }
        return rounds;
    }

    /** Whether a need is too long after the first of a round to go with it. */
    static boolean beyond(@Nullable LocalDate first, @Nullable LocalDate need, CoatingShop shop) {
        int days = shop.time().roundDays();
        return days > 0 && first != null && need != null && need.isAfter(first.plusDays(days - 1L));
    }

    private Comparator<Bill> byNeed() {
        int assemblyDays = catalogue.workshop().assemblyDays();
        return Comparator.comparing((Bill bill) -> needBy(bill.order(), assemblyDays), BatchRow.EARLIEST)
                .thenComparing(bill -> bill.order().name());
    }

    static SortedSet<String> cautions(Collection<Bill> bills) {
        SortedSet<String> codes = new TreeSet<>();
        bills.forEach(bill -> codes.addAll(bill.resolved().kit().cautionsOn(SHEET)));
        return codes;
    }
}
