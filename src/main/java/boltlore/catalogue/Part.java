package boltlore.catalogue;

import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is true of a part in every family. Cost, mass and quantity are for one of its unit.
 *
 * @param cost bought: all of it, where it has price breaks that of the smallest quantity; made: its own added cost, children roll up. In the workshop's currency
 * @param scrapPercent share of the issue that is lost, 0 to under 100
 * @param massKg mass of a leaf; null on an assembly, whose mass rolls up
 * @param leadDays calendar days from order or release to stock, its own step only
 * @param bin where it is picked; empty where it has none
 * @param traits its kinds and what it is rated for
 * @param service when it is replaced; null where it lasts as long as the vehicle
 * @param upkeep its documents, its successor, its alternates
 */
public record Part(
        PartNumber number,
        String revision,
        Wording name,
        String unit,
        Source source,
        BigDecimal cost,
        BigDecimal scrapPercent,
        @Nullable BigDecimal massKg,
        int leadDays,
        String bin,
        @Nullable Tracked tracked,
        @Nullable Buying buying,
        Structure structure,
        Making making,
        List<Need> needs,
        @Nullable CoatingSpec coat,
        @Nullable Integer lengthMm,
        @Nullable Fixing fixing,
        List<Hole> holes,
        @Nullable Handed handed,
        List<Port> ports,
        List<String> cautions,
        Traits traits,
        @Nullable Customs customs,
        @Nullable Transport transport,
        @Nullable Service service,
        Geometry geometry,
        Upkeep upkeep) {

    /** The same part at another cost of one. */
    public Part costing(BigDecimal other) {
        return copy(other, massKg, making);
    }

    /** The same part with pieces of other lengths, and the mass that comes of them. */
    Part cutTo(List<Cut> cuts, @Nullable BigDecimal otherMassKg) {
        return copy(cost, otherMassKg, making.cutTo(cuts));
    }

    private Part copy(BigDecimal otherCost, @Nullable BigDecimal otherMassKg, Making otherMaking) {
        return new Part(
                number,
                revision,
                name,
                unit,
                source,
                otherCost,
                scrapPercent,
                otherMassKg,
                leadDays,
                bin,
                tracked,
                buying,
                structure,
                otherMaking,
                needs,
                coat,
                lengthMm,
                fixing,
                holes,
                handed,
                ports,
                cautions,
                traits,
                customs,
                transport,
                service,
                geometry,
                upkeep);
    }

    /** Whether another part has taken its place for every order, so that no kit holds it. */
    public boolean superseded() {
        Upkeep.Successor successor = upkeep.replacedBy();
        return successor != null && successor.since().isAlways();
    }

    public List<Contained> contains() {
        return structure.contains();
    }

    /** The ports that the interlock runs through. */
    public List<Port> connectors() {
        return ports.stream().filter(Port::interlocked).toList();
    }

    /** The port of that name, or null where the part has none. */
    public @Nullable Port port(String wanted) {
        return ports.stream()
                .filter(port -> port.name().equals(wanted))
                .findFirst()
                .orElse(null);
    }

    public boolean isAssembly() {
        return !structure.contains().isEmpty();
    }

    /** Whether it is the base vehicle's own, which goes back in. */
    public boolean reused() {
        return source == Source.DONOR;
    }

    /** Whether stores pick it whole, and nobody has said where from. */
    public boolean lacksBin() {
        return pickedWhole() && !reused() && bin.isEmpty();
    }

    /** Whether stores hand it out as it is: a leaf, or an assembly that is stocked, welded or coated whole. */
    public boolean pickedWhole() {
        return !isAssembly() || structure.stocked() || structure.joined() == Joined.WELDED || coat != null;
    }
}
