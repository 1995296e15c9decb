package boltlore.catalogue;

import boltlore.measure.Wording;
import org.jspecify.annotations.Nullable;

/**
 * When a part is replaced because it wears or ages: after so many months or so many kilometres, whichever comes first, at
 * least one of them.
 *
 * @param everyMonths from 1
 * @param everyKm in km, from 1
 * @param why what wears, and whose value the interval is
 */
public record Service(
        @Nullable Integer everyMonths, @Nullable Integer everyKm, Wording why) {}
