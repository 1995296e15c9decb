package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.Map;

/**
 * What an hour of work costs, overhead not in it.
 *
 * @param perHour of every operation that has no rate of its own
 */
public record LabourRates(BigDecimal perHour, Map<String, OperationRate> operations) {

    public OperationRate of(String operation) {
        return operations.getOrDefault(operation, new OperationRate(operation, perHour, false));
    }
}
