package boltlore.trades.coating;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import boltlore.order.Order;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Kit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** Gathers the coated pieces of bills into rows by part, finish and status, and numbers the pieces of each order. */
final class RowCollector {

    private record Same(PartNumber part, String finish, CoatingStatus status) {}

    private static final Comparator<Same> SAME =
            Comparator.comparing(Same::part).thenComparing(Same::finish).thenComparing(Same::status);

    private final Catalogue catalogue;
    private final Map<Same, BatchRow> rows = new HashMap<>();

    RowCollector(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Rows with the earliest need first; marks in the order of the bills. */
    List<BatchRow> rows(List<Bill> bills) {
        bills.forEach(this::collect);
        return rows.entrySet().stream()
                .sorted(Map.Entry.comparingByKey(SAME))
                .map(Map.Entry::getValue)
                .sorted(BatchRow.EARLIEST_NEED)
                .toList();
    }

    /** Pieces are numbered in the order of standings, so that the numbers of what is coated now have no gap. */
    private void collect(Bill bill) {
        Map<PartNumber, Integer> numbered = new HashMap<>();
        Map<CoatingStatus, List<Item>> coated =
                bill.coated().collect(Collectors.groupingBy(item -> status(item, bill)));
        for (CoatingStatus status : CoatingStatus.values()) {
            for (Item item : coated.getOrDefault(status, List.of())) {
                Finish finish = finish(item.part(), finish(item));
                add(item.part(), finish, status, marks(item.part(), item.quantity(), bill.order(), numbered));
            }
            if (status == CoatingStatus.EXTRA) {
                extras(bill, numbered);
            }
        }
    }

    private void extras(Bill bill, Map<PartNumber, Integer> numbered) {
        for (ExtraPieces.Pieces extra : ExtraPieces.find(bill, catalogue)) {
            Finish finish = finish(extra.part(), extra.finish());
            add(
                    extra.part(),
                    finish,
                    CoatingStatus.EXTRA,
                    marks(extra.part(), extra.quantity(), bill.order(), numbered));
        }
    }

    private PieceMarks marks(Part part, BigDecimal quantity, Order order, Map<PartNumber, Integer> numbered) {
        int pieces = quantity.setScale(0, RoundingMode.CEILING).intValueExact();
        int to = numbered.merge(part.number(), pieces, Integer::sum);
        LocalDate needBy = CoatPlanner.needBy(order, catalogue.workshop().assemblyDays());
        return new PieceMarks(order.name(), needBy, to - pieces + 1, to);
    }

    private static CoatingStatus status(Item item, Bill bill) {
        Kit kit = bill.resolved().kit();
        if (!kit.unused().contains(item.line())) {
            return CoatingStatus.NEEDED;
        }
        Finding undecided = new Finding(FindingKind.UNUSED, item.line().text());
        return bill.resolved().findings().contains(undecided) ? CoatingStatus.HELD_BACK : CoatingStatus.KEPT;
    }

    private void add(Part part, Finish finish, CoatingStatus status, PieceMarks marks) {
        CoatingSpec coat = Objects.requireNonNull(part.coat());
        rows.merge(
                new Same(part.number(), finish.name(), status),
                new BatchRow(part, coat, finish, Masses.eachKg(part, catalogue::part), status, List.of(marks)),
                RowCollector::together);
    }

    private static BatchRow together(BatchRow first, BatchRow second) {
        List<PieceMarks> marks = new ArrayList<>(first.marks());
        marks.addAll(second.marks());
        return new BatchRow(
                first.part(), first.coat(), first.finish(), first.massKg(), first.status(), PieceMarks.joined(marks));
    }

    private static String finish(Item item) {
        CoatingSpec coat = Objects.requireNonNull(item.part().coat());
        return item.finish().isEmpty() && coat.finish() != null ? coat.finish() : item.finish();
    }

    private Finish finish(Part part, String name) {
        Finish finish = catalogue.finishes().get(name);
        if (finish == null) {
            throw new IllegalArgumentException(part.number() + " takes no finish that is known: '" + name + "'");
        }
        return finish;
    }
}
