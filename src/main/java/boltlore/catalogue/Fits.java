package boltlore.catalogue;

import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What of a family must fit together whatever is ordered: energy paths and circuits, boxes and what they hold, shafts
 * between their flanges, quantities that follow from others, what earth straps join.
 */
public record Fits(List<Run> runs, List<Box> boxes, List<Shaft> shafts, List<Follows> quantities, List<Strap> straps) {

    /** Of a family that says nothing of what must fit. */
    public static final Fits NONE = new Fits(List.of(), List.of(), List.of(), List.of(), List.of());

    /**
     * An energy path, from where it begins to where it ends; or a circuit, of which the last step is joined to the first.
     *
     * @param required orders that must have it
     * @param closed whether it is a circuit
     * @param filling where a circuit of liquid is filled and bled, else null
     */
    public record Run(
            String name,
            Flow flow,
            Condition required,
            boolean closed,
            @Nullable Filling filling,
            List<Step> steps) {}

    /**
     * One position that a run passes through.
     *
     * @param in port of the part there at which the run comes in; empty at the beginning of a path
     * @param out port at which it goes on; empty at the end of a path
     * @param when the run passes through it
     */
    public record Step(PositionName position, String in, String out, Condition when) {}

    /** Where a circuit is filled, and where its air gets out. */
    public record Filling(PositionName fill, PositionName bleed) {}

    /**
     * A box and what lies in it side by side, in layers.
     *
     * @param layers at most so many, one above the other
     * @param gapMm between neighbours and beside the walls
     * @param layerMm height that each layer takes beside its contents: plates, pads, covers
     * @param upright whether their height must stay upright; else they may be turned any way
     */
    public record Box(PositionName position, PositionName holds, int layers, int gapMm, int layerMm, boolean upright) {}

    /** A shaft between two flanges; it slides by so many mm together or apart from its own length. */
    public record Shaft(PositionName position, List<Flange> from, List<Flange> to, int slideMm) {}

    /** Where a flange stands, in mm behind the front axle. */
    public record Flange(Condition when, int stationMm) {}

    /**
     * Two sums that are equal in every kit.
     *
     * @param safety whether it holds drive unit or battery, or keeps people from high voltage, so that an order stops where
     *     they are not
     */
    public record Follows(String name, String because, boolean safety, List<Share> of, List<Share> from) {}

    /** So many for each of what is counted; below 0 for so many fewer. */
    public record Share(Counted counted, BigDecimal each) {}

    /**
     * One earth strap: what it joins.
     *
     * @param position at which the strap stands, perhaps with others
     * @param when it is there
     * @param ends positions that it is bolted to, one or two; with one alone its other end is on the base vehicle
     */
    public record Strap(PositionName position, Condition when, List<PositionName> ends) {}

    /** What can be counted in a kit. */
    public sealed interface Counted {}

    /** Pieces at a position. */
    public record Pieces(PositionName position) implements Counted {}

    /** Length of what lies at a position, in m. */
    public record Metres(PositionName position) implements Counted {}

    /** Holes of that diameter in the parts at a position. */
    public record Holes(PositionName position, BigDecimal diameterMm) implements Counted {}

    /** Pieces of a part in the whole kit. */
    public record PartsInKit(PartNumber part) implements Counted {}

    /** Joins of ports of that kind and bore, over all runs. */
    public record JoinsMade(String kind, @Nullable BigDecimal boreMm) implements Counted {}
}
