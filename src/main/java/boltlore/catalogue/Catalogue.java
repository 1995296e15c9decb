package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All that the workshop knows, read and checked.
 *
 * @param revision content hash of all catalogue files
 * @param prices how full costs and quotations are worked out, or null where the workshop has not written it down
 * @param shipping how kits are packed and sent
 * @param capacity what each work centre can do, or null where the workshop has not written it down
 * @param stores how parts are kept
 * @param house what it asks of every family
 */
public record Catalogue(
        Workshop workshop,
        Map<String, Finish> finishes,
        Map<String, Material> materials,
        Map<PartNumber, Part> parts,
        Map<String, Family> families,
        String revision,
        @Nullable PriceBook prices,
        Shipping shipping,
        @Nullable Capacity capacity,
        Stores stores,
        HouseRules house) {

    /** A catalogue that says nothing about its stores, of a workshop that asks nothing of its families. */
    public Catalogue(
            Workshop workshop,
            Map<String, Finish> finishes,
            Map<String, Material> materials,
            Map<PartNumber, Part> parts,
            Map<String, Family> families,
            String revision,
            @Nullable PriceBook prices,
            Shipping shipping) {
        this(
                workshop,
                finishes,
                materials,
                parts,
                families,
                revision,
                prices,
                shipping,
                null,
                Stores.NONE,
                HouseRules.NONE);
    }

    /** A catalogue of which no full cost can be worked out, and that says nothing about shipping. */
    public Catalogue(
            Workshop workshop,
            Map<String, Finish> finishes,
            Map<String, Material> materials,
            Map<PartNumber, Part> parts,
            Map<String, Family> families,
            String revision) {
        this(workshop, finishes, materials, parts, families, revision, null, Shipping.NONE);
    }

    /** The part of that number; every number inside a checked catalogue is known. */
    public Part part(PartNumber number) {
        Part part = parts.get(number);
        if (part == null) {
            throw new IllegalArgumentException("No part " + number + " in the catalogue");
        }
        return part;
    }

    /**
     * The catalogue as it is for one vehicle.
     *
     * @param measuredMm dimensions of the family by name; one that is not there is taken as usual
     */
    public Catalogue measured(Family family, Map<String, BigDecimal> measuredMm) {
        return family.measures().isEmpty()
                ? this
                : new Catalogue(
                        workshop,
                        finishes,
                        materials,
                        MeasuredParts.of(parts, family, measuredMm),
                        families,
                        revision,
                        prices,
                        shipping,
                        capacity,
                        stores,
                        house);
    }

    /** The part that is current today where that one was once; itself where it is. Successors in a checked catalogue end. */
    public PartNumber current(PartNumber number) {
        PartNumber last = number;
        Upkeep.Successor successor = part(last).upkeep().replacedBy();
        while (successor != null) {
            last = successor.part();
            successor = part(last).upkeep().replacedBy();
        }
        return last;
    }

    public Family family(String name) {
        Family family = families.get(name);
        if (family == null) {
            throw new IllegalArgumentException("No family " + name + " in the catalogue");
        }
        return family;
    }

    /** What people call a sub-system; one that the workshop gives no words for goes by its name. */
    public String subSystemSays(String name, String language) {
        String says = prices == null ? name : prices.called(name, language);
        return says.substring(0, 1).toUpperCase(Locale.ROOT) + says.substring(1);
    }

    /** How a finish is called; one that is not listed goes by its name, none by nothing. */
    public String finishSays(String name, String language) {
        Finish finish = finishes.get(name);
        return finish == null ? name : finish.says().in(language);
    }
}
