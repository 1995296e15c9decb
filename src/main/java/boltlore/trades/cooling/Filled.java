package boltlore.trades.cooling;

import boltlore.bill.Item;
import boltlore.catalogue.Cooling.Fitted;
import boltlore.catalogue.Cooling.Passage;
import boltlore.findings.Finding;
import boltlore.measure.PositionName;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Whether the kit's pump and coolant are those that a circuit is reckoned with, and enough of it. */
final class Filled {

    private static final double PERCENT = 100;
    private static final double CUBIC_MM_IN_LITRE = 1e6;

    /** Filling, bleeding and a first topping up; workshop's own value, check before use. */
    private static final double MOST_TIMES = 2;

    private Filled() {}

    static Stream<Finding> findings(CircuitFlow flow, KitInWork kit) {
        return Stream.of(pump(flow, kit), others(flow, kit), amount(flow, kit), mix(flow, kit))
                .flatMap(found -> found);
    }

    /** Radiator, fan and whatever else the circuit's figures are of. */
    private static Stream<Finding> others(CircuitFlow flow, KitInWork kit) {
        return flow.circuit().fitted().figuresOf().stream().flatMap(of -> {
            List<String> there = at(of.position(), kit);
            return there.contains(of.part().text())
                    ? Stream.<Finding>of()
                    : Stream.of(found(
                            CoolingFinding.FIGURES_OF_OTHER_PART,
                            flow,
                            "part",
                            of.part().text(),
                            "position",
                            of.position().text(),
                            "fitted",
                            there.isEmpty() ? "–" : there));
        });
    }

    private static List<String> at(PositionName position, KitInWork kit) {
        return kit.bill().items().stream()
                .filter(item -> item.position().name().equals(position))
                .map(item -> item.part().number().text())
                .toList();
    }

    private static Stream<Finding> pump(CircuitFlow flow, KitInWork kit) {
        Fitted fitted = flow.circuit().fitted();
        if (fitted.pumpAt() == null || fitted.pumpPart() == null) {
            return Stream.of(found(CoolingFinding.PUMP_NOT_NAMED, flow));
        }
        List<String> there = at(fitted.pumpAt(), kit);
        return there.contains(fitted.pumpPart().text())
                ? Stream.of()
                : Stream.of(found(
                        CoolingFinding.PUMP_OF_OTHER_CURVE,
                        flow,
                        "part",
                        fitted.pumpPart().text(),
                        "position",
                        fitted.pumpAt().text(),
                        "fitted",
                        there.isEmpty() ? "–" : there));
    }

    private static Stream<Finding> amount(CircuitFlow flow, KitInWork kit) {
        Fitted fitted = flow.circuit().fitted();
        List<Passage> passages = flow.circuit().passages();
        if (fitted.coolantAt() == null || passages.stream().anyMatch(each -> each.holdsLitres() == null)) {
            return Stream.of(found(CoolingFinding.COOLANT_AMOUNT_NOT_JUDGED, flow));
        }
        double holds = holdsLitres(flow);
        double mixed =
                coolant(flow, kit).mapToDouble(item -> mixedLitres(item, kit)).sum();
        if (mixed >= holds && mixed <= MOST_TIMES * holds) {
            return Stream.of();
        }
        return Stream.of(found(
                mixed < holds ? CoolingFinding.COOLANT_TOO_LITTLE : CoolingFinding.COOLANT_TOO_MUCH,
                flow,
                "holds",
                tenths(holds),
                "mixed",
                tenths(mixed),
                "times",
                BigDecimal.valueOf((int) MOST_TIMES)));
    }

    /** Hoses as cylinders of their bore, what coolant flows through, and the tank. */
    static double holdsLitres(CircuitFlow flow) {
        double hoses = flow.hoses().stream()
                .mapToDouble(hose -> StrictMath.PI / 4 * hose.boreMm() * hose.boreMm() * hose.lengthMm())
                .sum();
        double passages = flow.circuit().passages().stream()
                .map(Passage::holdsLitres)
                .filter(Objects::nonNull)
                .mapToDouble(BigDecimal::doubleValue)
                .sum();
        return hoses / CUBIC_MM_IN_LITRE
                + passages
                + flow.circuit().fitted().tankLitres().doubleValue();
    }

    private static Stream<Item> coolant(CircuitFlow flow, KitInWork kit) {
        return kit.bill().items().stream()
                .filter(item ->
                        item.position().name().equals(flow.circuit().fitted().coolantAt()));
    }

    /** A concentrate is mixed with the water that the weights have it mixed with; any other goes in as it is. */
    private static double mixedLitres(Item item, KitInWork kit) {
        BigDecimal percent =
                kit.family().weights().concentrates().get(item.part().number());
        double quantity = item.quantity().doubleValue();
        return percent == null ? quantity : quantity / percent.doubleValue() * PERCENT;
    }

    private static Stream<Finding> mix(CircuitFlow flow, KitInWork kit) {
        BigDecimal reckoned = flow.coolant().concentratePercent();
        if (reckoned == null) {
            return Stream.of();
        }
        return coolant(flow, kit)
                .map(item -> kit.family()
                        .weights()
                        .concentrates()
                        .getOrDefault(item.part().number(), BigDecimal.valueOf((int) PERCENT)))
                .filter(percent -> percent.compareTo(reckoned) != 0)
                .distinct()
                .map(percent ->
                        found(CoolingFinding.COOLANT_MIX_DIFFERS, flow, "reckoned", reckoned, "mixed", percent));
    }

    private static BigDecimal tenths(double litres) {
        return BigDecimal.valueOf(litres).setScale(1, RoundingMode.HALF_UP);
    }

    private static Finding found(CoolingFinding kind, CircuitFlow flow, Object... more) {
        Object[] all = Stream.concat(Stream.of("circuit", flow.circuit().says()), Stream.of(more))
                .toArray();
        return Finding.of(kind, flow.circuit().name(), all);
    }
}
