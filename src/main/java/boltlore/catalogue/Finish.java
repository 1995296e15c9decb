package boltlore.catalogue;

import boltlore.measure.Wording;
import java.util.List;
import java.util.Set;

/**
 * A finish: pre-treatment, coats from the metal outwards, and where it is put on.
 *
 * @param metals that its pre-treatment prepares; empty where that is not known
 */
public record Finish(
        String name,
        Wording says,
        String preTreatment,
        Set<String> metals,
        List<PowderCoat> coats,
        CoatedWhere where) {}
