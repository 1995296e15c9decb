package boltlore.trades.charging;

import java.math.BigDecimal;

/**
 * The current of a branch in A: the larger of what is declared and what is worked out.
 *
 * @param hoursAmps that flow for hours
 * @param mostAmps that flow at all, if only for a short time: cable and fuse bear them as if for hours
 * @param derived whether they were worked out of what the branch feeds, and not only declared
 * @param says how they come about
 */
public record BranchLoad(BigDecimal hoursAmps, BigDecimal mostAmps, boolean derived, String says) {}
