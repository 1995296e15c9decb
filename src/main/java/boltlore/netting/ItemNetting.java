package boltlore.netting;

import boltlore.netting.ItemPlan.Brought;
import boltlore.netting.PlanningData.ScheduledReceipt;
import boltlore.netting.Requirement.Asker;
import boltlore.netting.Supply.From;
import boltlore.netting.Supply.Peg;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Nets one item, period by period: projected on hand = on hand before + receipts − gross requirements; the net requirement is
 * what the safety stock lacks then; a lot covers it and is released a lead time before. Past due requirements are netted first.
 * Receipts that are on their way are brought forward before anything more is ordered. The safety stock is asked for from the
 * first period in which an order of today can be in; until then it is there to be used.
 */
final class ItemNetting {

    private static final Comparator<Requirement> EARLIEST_FIRST =
            Comparator.comparingInt(Requirement::period).thenComparing(each -> asker(each.asker()));

    /** The part of a receipt on its way that is not used yet. */
    private record Coming(ScheduledReceipt receipt, BigDecimal left) {}

    private final StockItem item;
    private final PlanningData data;
    private final int level;
    private final int safeFrom;
    private final List<Requirement> requirements;
    private final NavigableMap<Integer, BigDecimal> asked = new TreeMap<>();
    private final Deque<Coming> coming = new ArrayDeque<>();
    private final List<PlannedReceipt> planned = new ArrayList<>();
    private final List<Brought> brought = new ArrayList<>();
    private final List<Supply> unpegged = new ArrayList<>();
    private BigDecimal available;

    ItemNetting(StockItem item, PlanningData data, int level, List<Requirement> gross, int now) {
        this.item = item;
        this.data = data;
        this.level = level;
        this.safeFrom = now + data.leadPeriods();
        this.requirements = gross.stream().sorted(EARLIEST_FIRST).toList();
        this.available = data.onHand();
        data.scheduled().stream()
                .sorted(Comparator.comparingInt(ScheduledReceipt::period))
                .forEach(receipt -> coming.add(new Coming(receipt, receipt.quantity())));
        asked.put(safeFrom, data.safetyStock());
        requirements.forEach(each -> asked.merge(each.period(), each.quantity(), BigDecimal::add));
    }

    private static String asker(Asker asker) {
        if (asker instanceof Asker.FromOutside outside) {
            return "0" + outside.name();
        }
        return asker instanceof Asker.ForPlanned parent ? "1" + parent.receipt().item() : "";
    }

    ItemPlan plan() {
        unpegged.add(new Supply(new From.OnHand(), Integer.MIN_VALUE, data.onHand(), List.of()));
        asked.forEach(this::net);
        coming.forEach(rest -> use(rest.receipt(), rest.receipt().period(), rest.left()));
        return new ItemPlan(item, data, level, requirements, List.copyOf(planned), List.copyOf(brought), pegged());
    }

    private void net(int period, BigDecimal gross) {
        while (!coming.isEmpty() && coming.getFirst().receipt().period() <= period) {
            Coming due = coming.removeFirst();
            use(due.receipt(), due.receipt().period(), due.left());
        }
        available = available.subtract(gross);
        bringForward(period);
        if (available.signum() < 0) {
            order(period);
        }
    }

    private void bringForward(int period) {
        while (available.signum() < 0 && !coming.isEmpty()) {
            Coming next = coming.removeFirst();
            BigDecimal used = next.left().min(available.negate());
            brought.add(new Brought(next.receipt(), period, used));
            use(next.receipt(), period, used);
            if (used.compareTo(next.left()) < 0) {
                coming.addFirst(new Coming(next.receipt(), next.left().subtract(used)));
            }
        }
    }

    private void use(ScheduledReceipt receipt, int period, BigDecimal quantity) {
        available = available.add(quantity);
        unpegged.add(new Supply(new From.Scheduled(receipt), period, quantity, List.of()));
    }

    /** Nothing is on its way any more, so the periods that the lot covers lack what they ask for, less what is over. */
    private void order(int period) {
        BigDecimal net = available.negate();
        BigDecimal needed = asked.subMap(period, false, period + data.lot().periods() - 1, true).values().stream()
                .reduce(net, BigDecimal::add);
        PlannedReceipt receipt = new PlannedReceipt(
                item, period, period - data.leadPeriods(), net, data.lot().lot(needed));
        planned.add(receipt);
        available = available.add(receipt.quantity());
        unpegged.add(new Supply(new From.Planned(receipt), period, receipt.quantity(), List.of()));
    }

    /** Supplies and requirements are laid side by side from their beginnings; what lies beside a supply is what it covers. */
    private List<Supply> pegged() {
        List<Requirement> all = new ArrayList<>(requirements);
        if (data.safetyStock().signum() > 0) {
            all.add(new Requirement(safeFrom, data.safetyStock(), new Asker.Safety()));
            all.sort(EARLIEST_FIRST);
        }
        Deque<Peg> open = new ArrayDeque<>();
        all.forEach(each -> open.add(new Peg(each, BigDecimal.ZERO, each.quantity())));
        return unpegged.stream().map(supply -> pegged(supply, open)).toList();
    }

    private static Supply pegged(Supply supply, Deque<Peg> open) {
        List<Peg> pegs = new ArrayList<>();
        BigDecimal left = supply.quantity();
        while (left.signum() > 0 && !open.isEmpty()) {
            Peg next = open.removeFirst();
            BigDecimal taken = next.quantity().min(left);
            pegs.add(new Peg(next.requirement(), next.from(), taken));
            left = left.subtract(taken);
            if (taken.compareTo(next.quantity()) < 0) {
                open.addFirst(new Peg(
                        next.requirement(),
                        next.from().add(taken),
                        next.quantity().subtract(taken)));
            }
        }
        return new Supply(supply.from(), supply.period(), supply.quantity(), pegs);
    }
}
