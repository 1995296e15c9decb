package boltlore.trades.picking;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.catalogue.Workshop;
import boltlore.order.Extra;
import boltlore.resolution.FamilyPlan;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts a picking list together from a bill. */
final class PickingMaker {

    private final FamilyPlan plan;
    private final Bill bill;
    private final Bill sure;
    private final Walk walk;
    private final ShownCautions shown;
    private final List<BagPage> bags;
    private final SortedMap<Piece, BigDecimal> spares;

    PickingMaker(FamilyPlan plan, Bill bill) {
        Workshop workshop = plan.catalogue().workshop();
        this.plan = plan;
        this.bill = bill;
        this.sure = Undecided.sure(plan, bill);
        this.walk = Walk.of(plan.catalogue());
        this.shown = new ShownCautions(workshop.cautions());
        this.bags = Bags.fill(sure, workshop.stages(), shown);
        this.spares = spares(bags);
    }

    PickingList list() {
        List<PickRow> rows = rows();
        List<CoatedRow> fromCoating = rows.stream()
                .filter(row -> !row.finish().isEmpty())
                .map(row -> new CoatedRow(row, coatedAt(row.finish())))
                .sorted(Comparator.comparing(coated -> coated.row().finish()))
                .toList();
        List<PickRow> fromBins =
                rows.stream().filter(row -> row.finish().isEmpty()).toList();
        List<ExtraRow> extras = bill.order().extra().stream().map(this::extra).toList();
        return new PickingList(
                fromBins, fromCoating, Undecided.onHold(bill, sure, walk), extras, bags, head(rows, extras));
    }

    /** One row for each part and finish, in walking order. */
    private List<PickRow> rows() {
        SortedMap<Piece, List<Item>> pieces =
                sure.picked().collect(Collectors.groupingBy(Piece::of, TreeMap::new, Collectors.toList()));
        return pieces.values().stream()
                .map(this::row)
                .sorted(Comparator.comparing((PickRow row) -> row.part().bin(), walk.order()))
                .toList();
    }

    private PickRow row(List<Item> items) {
        Item first = items.get(0);
        BigDecimal quantity = items.stream().map(Item::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new PickRow(
                first.part(),
                first.finish(),
                quantity,
                byStage(items),
                spares.getOrDefault(Piece.of(first), BigDecimal.ZERO),
                shown.of(items.stream().flatMap(Item::all).map(Item::part)),
                items.stream().flatMap(Item::all).anyMatch(PickingMaker::isMeasured));
    }

    private static boolean isMeasured(Item item) {
        return item.part().making().cuts().stream().anyMatch(cut -> cut.measured() != null);
    }

    private List<StageQuantity> byStage(List<Item> items) {
        SortedMap<String, BigDecimal> sums =
                new TreeMap<>(Bags.fittingOrder(plan.catalogue().workshop().stages()));
        items.forEach(item -> sums.merge(item.stage(), item.quantity(), BigDecimal::add));
        return sums.entrySet().stream()
                .map(sum -> new StageQuantity(sum.getKey(), sum.getValue()))
                .toList();
    }

    private static SortedMap<Piece, BigDecimal> spares(List<BagPage> bags) {
        SortedMap<Piece, BigDecimal> spares = new TreeMap<>();
        bags.stream()
                .flatMap(page -> page.rows().stream())
                .forEach(row -> spares.merge(Piece.of(row), row.spares(), BigDecimal::add));
        return spares;
    }

    private String coatedAt(String finishName) {
        Finish finish = plan.catalogue().finishes().get(finishName);
        if (finish == null) {
            return "";
        }
        CoatedWhere where = finish.where();
        if (where instanceof CoatedWhere.OutsideByArea byArea) {
            return byArea.coater();
        }
        return where instanceof CoatedWhere.OutsideByPiece byPiece ? byPiece.coater() : "";
    }

    private ExtraRow extra(Extra extra) {
        Part part = extra.part() == null ? null : plan.part(extra.part());
        return new ExtraRow(extra, part, part == null ? List.of() : shown.of(Stream.of(part)));
    }

    private List<String> head(List<PickRow> rows, List<ExtraRow> extras) {
        SortedSet<String> codes = bill.resolved().kit().cautionsOn(ShownCautions.SHEET);
        rows.forEach(row -> codes.addAll(row.cautions()));
        extras.forEach(extra -> codes.addAll(extra.cautions()));
        return List.copyOf(codes);
    }
}
