package boltlore.catalogue;

import java.math.BigDecimal;

/**
 * What an hour of one operation costs.
 *
 * @param outside whether another firm does it: then it is no labour of ours and carries no overhead on labour
 */
public record OperationRate(String operation, BigDecimal perHour, boolean outside) {}
