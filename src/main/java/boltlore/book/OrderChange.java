package boltlore.book;

import java.math.BigDecimal;

/**
 * A change of a frozen order, or a service order.
 *
 * @param asker 'customer', 'workshop', 'supplier', or 'service' for parts that were added after shipping
 * @param from hash of the kit before
 * @param stands what the order stands on with it; of a service order only the kit
 * @param net of the whole kit with the change, of a service order of its parts alone
 * @param leadDays of the whole kit with the change
 * @param reason why it was proposed
 */
public record OrderChange(
        String order,
        int number,
        long entry,
        String asker,
        ChangeState state,
        String from,
        Frozen stands,
        String currency,
        BigDecimal net,
        int leadDays,
        String reason) {

    public static final String SERVICE = "service";
}
