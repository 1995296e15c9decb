package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is done with a finished kit before it leaves: its assembly; what its test and its crates take stands with them.
 *
 * @param positionMin minutes in which what lies at one position is put together, for stages that have no other
 * @param stages minutes for each position of these fit stages
 * @param perHour what an hour of it costs without overhead, or null: as every operation without a rate of its own
 */
public record KitWork(
        BigDecimal positionMin,
        Map<String, BigDecimal> stages,
        @Nullable BigDecimal perHour) {

    /** Of a workshop that has not told. */
    public static final KitWork NONE = new KitWork(BigDecimal.ZERO, Map.of(), null);

    public BigDecimal minutes(String stage) {
        return stages.getOrDefault(stage, positionMin);
    }
}
