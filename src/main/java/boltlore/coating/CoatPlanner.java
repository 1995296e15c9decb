package boltlore.coating;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Coater;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Oven;
import boltlore.order.Order;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Plans the coating of several orders together: batches, loads, send-outs, powder runs. */
public final class CoatPlanner {

    private static final String SHEET = "coating";

    private final Catalogue catalogue;
    private final CoatingShop shop;

    private CoatPlanner(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.shop = catalogue.workshop().coating();
    }

    /** Plans the bills, whose orders may be given in any order; each order at most once. */
    public static CoatPlan of(Collection<Bill> bills, Catalogue catalogue) {
        return new CoatPlanner(catalogue).plan(bills);
    }

    /** The day on which an order needs its parts coated and in store, or null where the order has no date. */
    public static @Nullable LocalDate needBy(Order order, int assemblyDays) {
        return order.due() == null ? null : order.due().minusDays(assemblyDays);
    }

    private CoatPlan plan(Collection<Bill> bills) {
        List<Bill> earliestFirst = bills.stream().sorted(byNeed()).toList();
        List<Order> orders = earliestFirst.stream().map(Bill::order).toList();
        List<BatchRow> rows = new RowCollector(catalogue).rows(earliestFirst);
        List<List<BatchRow>> groups = groups(rows);
        List<OvenBatch> batches = batches(groups);
        List<SendOut> sendOuts = sendOuts(groups, batches.size());
        List<PowderRun> runs = PowderRuns.of(batches, shop.booths());
        return new CoatPlan(orders, batches, sendOuts, heldBack(rows), runs, cautions(earliestFirst));
    }

    private static List<BatchRow> heldBack(List<BatchRow> rows) {
        return rows.stream().filter(row -> row.standing() == Standing.HELD_BACK).toList();
    }

    private Comparator<Bill> byNeed() {
        int assemblyDays = catalogue.workshop().assemblyDays();
        return Comparator.comparing((Bill bill) -> needBy(bill.order(), assemblyDays), BatchRow.EARLIEST)
                .thenComparing(bill -> bill.order().name());
    }

    /** One group for each finish, which stands for its place, powders and cure windows; earliest need first. */
    private static List<List<BatchRow>> groups(List<BatchRow> rows) {
        SortedSet<String> finishes = new TreeSet<>();
        rows.forEach(row -> finishes.add(row.finish().name()));
        return finishes.stream()
                .map(finish -> rows.stream()
                        .filter(row -> row.finish().name().equals(finish) && row.standing() != Standing.HELD_BACK)
                        .toList())
                .filter(group -> !group.isEmpty())
                .sorted(Comparator.comparing(BatchRow::earliestNeed, BatchRow.EARLIEST))
                .toList();
    }

    private List<OvenBatch> batches(List<List<BatchRow>> groups) {
        List<OvenBatch> batches = new ArrayList<>();
        for (List<BatchRow> group : groups) {
            Finish finish = group.get(0).finish();
            if (finish.where() instanceof CoatedWhere.OwnOven own) {
                Oven oven = known(shop.ovens().get(own.oven()), own.oven());
                batches.add(OvenBatch.of(batches.size() + 1, oven, group));
            }
        }
        return List.copyOf(batches);
    }

    private List<SendOut> sendOuts(List<List<BatchRow>> groups, int numbersUsed) {
        List<SendOut> sendOuts = new ArrayList<>();
        for (List<BatchRow> group : groups) {
            CoatedWhere where = group.get(0).finish().where();
            if (where instanceof CoatedWhere.OutsideByArea byArea) {
                sendOuts.add(sendOut(numbersUsed + sendOuts.size() + 1, byArea.coater(), group));
            } else if (where instanceof CoatedWhere.OutsideByPiece byPiece) {
                sendOuts.add(sendOut(numbersUsed + sendOuts.size() + 1, byPiece.coater(), group));
            }
        }
        return List.copyOf(sendOuts);
    }

    private SendOut sendOut(int number, String coaterName, List<BatchRow> group) {
        Coater coater = known(shop.coaters().get(coaterName), coaterName);
        BigDecimal price = group.stream().map(this::price).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new SendOut(number, group.get(0).finish(), coater, BatchRow.earliestNeed(group), group, price);
    }

    private BigDecimal price(BatchRow row) {
        return CoatingCost.ofArea(row.areaEachM2(), row.finish(), shop).multiply(BigDecimal.valueOf(row.pieces()));
    }

    private static SortedSet<String> cautions(List<Bill> bills) {
        SortedSet<String> codes = new TreeSet<>();
        bills.forEach(bill -> codes.addAll(bill.resolved().kit().cautions().getOrDefault(SHEET, new TreeSet<>())));
        return codes;
    }

    private static <T> T known(@Nullable T found, String name) {
        if (found == null) {
            throw new IllegalArgumentException("The coating shop does not know " + name);
        }
        return found;
    }
}
