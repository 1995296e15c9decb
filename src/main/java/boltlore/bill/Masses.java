package boltlore.bill;

import boltlore.catalogue.BottomUp;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** Mass roll-up: leaves carry mass, assemblies weigh what they contain. Without the film of powder. */
public final class Masses {

    private Masses() {}

    /** Mass of one of the part's unit in kg, its children included. */
    public static BigDecimal eachKg(Part part, Function<PartNumber, Part> parts) {
        Map<PartNumber, BigDecimal> known = new HashMap<>();
        Function<PartNumber, Part> all = number -> number.equals(part.number()) ? part : parts.apply(number);
        return new BottomUp<PartNumber, BigDecimal>(
                        known,
                        number -> all.apply(number).contains().stream()
                                .map(Contained::part)
                                .toList(),
                        number -> eachKg(all.apply(number), known))
                .of(part.number());
    }

    private static BigDecimal eachKg(Part part, Map<PartNumber, BigDecimal> children) {
        if (!part.isAssembly()) {
            return part.massKg() == null ? BigDecimal.ZERO : part.massKg();
        }
        return part.contains().stream()
                .map(child ->
                        children.getOrDefault(child.part(), BigDecimal.ZERO).multiply(child.quantity()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Mass in kg that the item itself adds to the kit: a leaf's, and nothing for an assembly, whose parts add it. */
    public static BigDecimal ownKg(Item item) {
        BigDecimal massKg = item.part().massKg();
        return item.part().isAssembly() || massKg == null ? BigDecimal.ZERO : massKg.multiply(item.quantity());
    }

    /** Mass of the whole kit in kg. */
    public static BigDecimal kitKg(Bill bill) {
        return bill.all().map(Masses::ownKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
