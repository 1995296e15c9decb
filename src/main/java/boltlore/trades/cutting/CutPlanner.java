package boltlore.trades.cutting;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Cut;
import boltlore.catalogue.Material;
import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import boltlore.order.Order;
import boltlore.trades.cutting.CutPlan.NotCut;
import boltlore.trades.cutting.CutPlan.OnHold;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Plans the sawing and the blanks of several orders together. */
public final class CutPlanner {

    private static final Comparator<@Nullable LocalDate> EARLIEST = Comparator.nullsLast(Comparator.naturalOrder());

    private final Catalogue catalogue;
    private final RemnantRack rack;
    private final SortedMap<String, List<PieceSet>> byMaterial = new TreeMap<>();
    private final SortedMap<PartNumber, List<String>> ordersOfBlank = new TreeMap<>();
    private final SortedMap<PartNumber, Integer> blanks = new TreeMap<>();
    private final List<OnHold> onHold = new ArrayList<>();
    private final List<NotCut> notCut = new ArrayList<>();
    private final List<Unmeasured> unmeasured = new ArrayList<>();

    private CutPlanner(Catalogue catalogue, RemnantRack rack) {
        this.catalogue = catalogue;
        this.rack = rack;
    }

    /**
     * Plans the bills, whose orders may be given in any order; each order at most once.
     *
     * @param rack its remnants, each name once
     */
    public static CutPlan plan(Collection<Bill> bills, Catalogue catalogue, RemnantRack rack) {
        return new CutPlanner(catalogue, rack).plan(bills);
    }

    private CutPlan plan(Collection<Bill> bills) {
        List<Bill> earliestFirst = bills.stream()
                .sorted(Comparator.comparing((Bill bill) -> bill.order().due(), EARLIEST)
                        .thenComparing(bill -> bill.order().name()))
                .toList();
        earliestFirst.forEach(this::collect);
        List<Order> orders = earliestFirst.stream().map(Bill::order).toList();
        List<MaterialCuts> materials = materials(orders);
        return new CutPlan(orders, materials, blanks(), onHold, notCut, unmeasured, idle(materials));
    }

    private void collect(Bill bill) {
        String order = bill.order().name();
        Catalogue own =
                catalogue.measured(bill.order().choices().family(), bill.order().measuredMm());
        CutCollector parts = new CutCollector(bill, own);
        parts.made().forEach((number, count) -> collect(order, own.part(number), count));
        parts.onHold().forEach((number, count) -> onHold.add(new OnHold(order, own.part(number), count)));
        unmeasured.addAll(Unmeasured.of(bill));
    }

    private void collect(String order, Part part, int count) {
        for (int i = 1; i <= count; i++) {
            sets(order, part, i);
        }
        if (part.making().blank() != null) {
            ordersOfBlank
                    .computeIfAbsent(part.number(), any -> new ArrayList<>())
                    .add(count + " for " + order);
            blanks.merge(part.number(), count, Integer::sum);
        }
    }

    private void sets(String order, Part part, int number) {
        Map<String, List<Cut>> cuts = part.making().cuts().stream()
                .collect(Collectors.groupingBy(Cut::material, TreeMap::new, Collectors.toList()));
        cuts.forEach((material, all) -> byMaterial
                .computeIfAbsent(material, any -> new ArrayList<>())
                .add(new PieceSet(order, part, number, all)));
    }

    private List<MaterialCuts> materials(List<Order> orders) {
        List<MaterialCuts> planned = new ArrayList<>();
        RemnantMarks marks = new RemnantMarks(orders.get(0).name(), rack);
        byMaterial.forEach((name, sets) -> {
            Material material = catalogue.materials().get(name);
            if (material == null || material.bars() == null) {
                sets.forEach(set -> notCut.add(new NotCut(set, name, null)));
            } else {
                int first = 1
                        + planned.stream().mapToInt(cuts -> cuts.bars().size()).sum();
                planned.add(cuts(material, sets, first, marks));
            }
        });
        return planned.stream().filter(cuts -> !cuts.bars().isEmpty()).toList();
    }

    private MaterialCuts cuts(Material material, List<PieceSet> sets, int firstBar, RemnantMarks marks) {
        MaterialPlanner planner = new MaterialPlanner(material, sets, remnantsOf(material.name()));
        planner.tooLong().forEach(set -> notCut.add(new NotCut(set, material.name(), material.bars())));
        return planner.plan(firstBar, marks::next);
    }

    private List<Remnant> remnantsOf(String material) {
        return rack.remnants().stream()
                .filter(remnant -> remnant.material().equals(material))
                .toList();
    }

    private List<Remnant> idle(List<MaterialCuts> planned) {
        List<String> cut = planned.stream().map(cuts -> cuts.material().name()).toList();
        return rack.remnants().stream()
                .filter(remnant -> !cut.contains(remnant.material()))
                .sorted(Comparator.comparing(Remnant::name))
                .toList();
    }

    private List<BlankRow> blanks() {
        List<BlankRow> rows = new ArrayList<>();
        blanks.forEach((number, count) -> {
            Part part = catalogue.part(number);
            Material sheet =
                    catalogue.materials().get(String.valueOf(part.making().material()));
            if (sheet != null) {
                rows.add(new BlankRow(part, sheet, ordersOfBlank.getOrDefault(number, List.of()), count));
            }
        });
        return rows.stream()
                .sorted(Comparator.comparing((BlankRow row) -> row.material().name()))
                .toList();
    }
}
