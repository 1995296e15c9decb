package boltlore.catalogue;

import boltlore.measure.Wording;
import java.util.List;

/** A finish: pre-treatment, coats from the metal outwards, and where it is put on. */
public record Finish(String name, Wording says, String preTreatment, List<PowderCoat> coats, CoatedWhere where) {}
