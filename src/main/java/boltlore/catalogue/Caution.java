package boltlore.catalogue;

import boltlore.measure.Wording;
import java.util.List;

/**
 * A caution in a full sentence.
 *
 * @param sheets that it stands on where a part of the kit bears its code
 * @param always names of sheets that it stands on whatever the kit
 */
public record Caution(String code, Wording says, List<String> sheets, List<String> always) {}
