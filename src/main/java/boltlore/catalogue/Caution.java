package boltlore.catalogue;

import boltlore.measure.Wording;
import java.util.List;

/** A caution in a full sentence, and the sheets it must stand on. */
public record Caution(String code, Wording says, List<String> sheets) {}
