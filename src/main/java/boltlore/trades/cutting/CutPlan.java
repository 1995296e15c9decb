package boltlore.trades.cutting;

import boltlore.catalogue.BarStock;
import boltlore.catalogue.Part;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.order.Order;
import java.util.Currency;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * All that is to be sawn and all blanks for some orders.
 *
 * @param orders earliest due first
 * @param materials in the order of their names
 * @param blanks by sheet, then by part
 * @param onHold parts that nobody has decided about, which are not cut
 * @param notCut what cannot be planned
 * @param unmeasured dimensions that pieces on the list are cut to and that nobody has measured
 * @param idle remnants of materials that nothing is cut from
 */
public record CutPlan(
        List<Order> orders,
        List<MaterialCuts> materials,
        List<BlankRow> blanks,
        List<OnHold> onHold,
        List<NotCut> notCut,
        List<Unmeasured> unmeasured,
        List<Remnant> idle) {

    /** Parts of one number in one order. */
    public record OnHold(String order, Part part, int count) {}

    /**
     * Pieces that no bar is known for.
     *
     * @param bars all too short for it, or null where none are known
     */
    public record NotCut(
            PieceSet set, String material, @Nullable BarStock bars) {}

    public CutPlan {
        orders = List.copyOf(orders);
        materials = List.copyOf(materials);
        blanks = List.copyOf(blanks);
        onHold = List.copyOf(onHold);
        notCut = List.copyOf(notCut);
        unmeasured = List.copyOf(unmeasured);
        idle = List.copyOf(idle);
    }

    public boolean isEmpty() {
        return materials.isEmpty() && blanks.isEmpty() && onHold.isEmpty() && notCut.isEmpty();
    }

    /** What a person must know: what waits for a decision, and where the list is not proved to be the cheapest. */
    Findings findings(Currency currency) {
        Stream<Finding> waiting = onHold.stream()
                .map(held -> Finding.of(
                        CuttingFinding.PART_NOT_TO_BE_CUT,
                        held.part().number().text(),
                        "order",
                        held.order(),
                        "part",
                        held.part().number().text(),
                        "name",
                        held.part().name(),
                        "count",
                        held.count()));
        Stream<Finding> open = unmeasured.stream().map(Unmeasured::finding);
        Stream<Finding> unproved = materials.stream()
                .filter(cuts -> !cuts.proven())
                .map(cuts -> Finding.of(
                        CuttingFinding.CHEAPER_CUTTING_POSSIBLE,
                        cuts.material().name(),
                        "material",
                        cuts.material().says(),
                        "cost",
                        cuts.cost(),
                        "bound",
                        cuts.atLeast(),
                        "gap",
                        cuts.gapPercent(),
                        "currency",
                        currency.getCurrencyCode()));
        return Stream.of(open, waiting, unproved).flatMap(found -> found).collect(Findings.collected());
    }

    /** What lies on the rack when all is cut. */
    public Stream<Remnant> left() {
        return Stream.concat(materials.stream().flatMap(MaterialCuts::left), idle.stream());
    }
}
