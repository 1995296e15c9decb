package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.util.Map;

/**
 * All that the workshop knows, read and checked.
 *
 * @param revision content hash of all catalogue files
 */
public record Catalogue(
        Workshop workshop,
        Map<String, Finish> finishes,
        Map<String, Material> materials,
        Map<PartNumber, Part> parts,
        Map<String, Family> families,
        String revision) {

    /** The part of that number; every number inside a checked catalogue is known. */
    public Part part(PartNumber number) {
        Part part = parts.get(number);
        if (part == null) {
            throw new IllegalArgumentException("No part " + number + " in the catalogue");
        }
        return part;
    }

    public Family family(String name) {
        Family family = families.get(name);
        if (family == null) {
            throw new IllegalArgumentException("No family " + name + " in the catalogue");
        }
        return family;
    }
}
