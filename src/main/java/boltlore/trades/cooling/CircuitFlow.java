package boltlore.trades.cooling;

import boltlore.catalogue.Cooling.Coolant;
import boltlore.catalogue.Cooling.CoolantCircuit;
import boltlore.catalogue.Cooling.FlowPoint;
import boltlore.catalogue.Cooling.Passage;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A circuit in work: the pump's curve against what the circuit takes, and the heat that the flow carries.
 *
 * @param hoses those that the kit has
 */
record CircuitFlow(CoolantCircuit circuit, Coolant coolant, List<LaidHose> hoses, Heat heat) {

    private static final int HALVINGS = 60;
    private static final double LITRES_IN_M3 = 1000;
    private static final double SECONDS = 60;

    /** A hose of the kit. */
    record LaidHose(String says, double lengthMm, double boreMm) {}

    /** What needs a flow, and how much of it. */
    record Least(String says, BigDecimal litresPerMin) {}

    /** A part of the circuit with its pressure drop in kPa. */
    record Drop(String says, double kpa) {}

    /** Each part of the circuit at that flow. */
    List<Drop> drops(double litresPerMin) {
        return Stream.of(
                        hoses.stream()
                                .map(hose -> new Drop(
                                        hose.says(), pipe(hose.boreMm()).hoseKpa(hose.lengthMm(), litresPerMin))),
                        circuit.fittings().stream()
                                .map(each -> new Drop(
                                        each.says(),
                                        pipe(each.boreMm().doubleValue())
                                                .fittingKpa(each.zeta().doubleValue() * each.count(), litresPerMin))),
                        circuit.passages().stream().map(each -> new Drop(each.says(), passage(each, litresPerMin))))
                .flatMap(drops -> drops)
                .toList();
    }

    private PipeFlow pipe(double boreMm) {
        return new PipeFlow(coolant, boreMm, circuit.roughnessMm().doubleValue());
    }

    private static double passage(Passage passage, double litresPerMin) {
        double share = litresPerMin / passage.drop().litresPerMin().doubleValue();
        return passage.drop().kpa().doubleValue() * share * share;
    }

    double circuitKpa(double litresPerMin) {
        return drops(litresPerMin).stream().mapToDouble(Drop::kpa).sum();
    }

    /** What the pump lifts at that flow, in a straight line between the points of its curve; 0 beyond them. */
    double pumpKpa(double litresPerMin) {
        List<FlowPoint> points = circuit.pump();
        for (int i = 1; i < points.size(); i++) {
            double left = points.get(i - 1).litresPerMin().doubleValue();
            double right = points.get(i).litresPerMin().doubleValue();
            if (litresPerMin <= right) {
                double from = points.get(i - 1).kpa().doubleValue();
                return from
                        + (litresPerMin - left)
                                / (right - left)
                                * (points.get(i).kpa().doubleValue() - from);
            }
        }
        return 0;
    }

    /** The flow in l/min at which the pump lifts what the circuit takes; halving finds it, for one falls as the other rises. */
    double litresPerMin() {
        double low = 0;
        double high =
                circuit.pump().get(circuit.pump().size() - 1).litresPerMin().doubleValue();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (pumpKpa(middle) >= circuitKpa(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** What needs the most flow. */
    Optional<Least> thirstiest() {
        return circuit.passages().stream()
                .flatMap(
                        each -> Stream.ofNullable(each.leastLitresPerMin()).map(least -> new Least(each.says(), least)))
                .max(Comparator.comparing(Least::litresPerMin));
    }

    /** How much warmer the coolant leaves what is cooled than it enters: heat / (flow × density × specific heat), in K. */
    double rise(double litresPerMin) {
        double kgPerSecond =
                litresPerMin / SECONDS / LITRES_IN_M3 * coolant.densityKgM3().doubleValue();
        return heat.watts() / (kgPerSecond * coolant.specificHeat().doubleValue());
    }

    /**
     * Where it enters the radiator, and so where it leaves what is cooled: air and heat over the radiator's W/K, as far as
     * that is reached, in °C.
     */
    double hottest() {
        return circuit.airC().doubleValue()
                + heat.effective() / circuit.radiatorWattsPerKelvin().doubleValue();
    }
}
