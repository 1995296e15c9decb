package boltlore.catalogue;

import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a family says about its coolant circuits. */
public record Cooling(List<Coolant> coolants, List<CoolantCircuit> circuits) {

    /** Of a family that says nothing about cooling. */
    public static final Cooling NONE = new Cooling(List.of(), List.of());

    /**
     * A coolant at the temperature that circuits are judged at.
     *
     * @param viscosityMpas dynamic viscosity in mPa s
     * @param specificHeat in J/(kg K)
     * @param concentratePercent share of concentrate by volume that the figures stand for; null where nobody says
     */
    public record Coolant(
            String name,
            String says,
            BigDecimal densityKgM3,
            BigDecimal viscosityMpas,
            BigDecimal specificHeat,
            @Nullable BigDecimal concentratePercent,
            String source) {}

    /** A point of a curve: pressure in kPa at a flow in l/min. */
    public record FlowPoint(BigDecimal litresPerMin, BigDecimal kpa) {}

    /** A hose of the kit, as long as the part at its position, or where it is sold by the metre, as much as the kit has. */
    public record Hose(PositionName position, BigDecimal boreMm) {}

    /**
     * Bends, T-pieces, inlets and outlets of one bore.
     *
     * @param zeta loss of each in dynamic pressures
     */
    public record Fittings(String says, BigDecimal boreMm, BigDecimal zeta, int count) {}

    /**
     * Something that coolant flows through, of which the pressure drop at one flow is known; it goes with the flow's square.
     *
     * @param leastLitresPerMin flow that it needs; null where it needs none
     * @param holdsLitres of coolant; null where nobody says
     */
    public record Passage(
            String says,
            FlowPoint drop,
            @Nullable BigDecimal leastLitresPerMin,
            @Nullable BigDecimal holdsLitres) {}

    /**
     * What a circuit is calculated with, as parts of the kit.
     *
     * @param pumpAt position of the pump whose curve it is; null where nobody says
     * @param pumpPart that pump; null where nobody says
     * @param coolantAt position of the coolant that fills the circuit; null where nobody says
     * @param tankLitres that stand in its tank when it is full; 0 without one
     * @param figuresOf parts that the circuit's other figures are of: the radiator, and the fan with which it gives off its heat
     */
    public record Fitted(
            @Nullable PositionName pumpAt,
            @Nullable PartNumber pumpPart,
            @Nullable PositionName coolantAt,
            BigDecimal tankLitres,
            List<FittedPart> figuresOf) {

        public static final Fitted NONE = new Fitted(null, null, null, BigDecimal.ZERO, List.of());
    }

    /** A part that stands at a position in the kits that a figure is of. */
    public record FittedPart(PositionName position, PartNumber part) {}

    /**
     * A closed circuit of pump, hoses, what is cooled, and a radiator.
     *
     * @param pump curve by rising flow, from 0 to the flow at which it lifts nothing
     * @param roughnessMm of the hoses' inside
     * @param heatWatts to be carried off; null where it is what the drive unit loses while it gives its torque for hours
     * @param moduleSpecificHeat of the battery modules that it cools, in J/(kg K); null where it cools no battery
     * @param radiatorWattsPerKelvin heat that the radiator gives off for each kelvin between coolant entering and air
     * @param airC of the hottest day
     * @param mostC that the coolant may reach where it leaves what is cooled
     */
    public record CoolantCircuit(
            String name,
            String says,
            Condition when,
            String coolant,
            List<FlowPoint> pump,
            BigDecimal roughnessMm,
            List<Hose> hoses,
            List<Fittings> fittings,
            List<Passage> passages,
            @Nullable BigDecimal heatWatts,
            @Nullable BigDecimal moduleSpecificHeat,
            BigDecimal radiatorWattsPerKelvin,
            BigDecimal airC,
            BigDecimal mostC,
            Fitted fitted,
            String source) {}
}
