package boltlore.book;

import boltlore.json.JsonOut;
import java.util.Comparator;

/**
 * A kit that holds what was asked for.
 *
 * @param customer key of the person
 * @param chassis of the vehicle, or empty
 * @param says how it holds it
 * @param out whether it has been taken out again
 */
public record Recalled(
        String order,
        OrderState state,
        String customer,
        String chassis,
        String part,
        String revision,
        String says,
        boolean out) {

    public static final Comparator<Recalled> BY_ORDER = Comparator.comparing(Recalled::order)
            .thenComparing(Recalled::part)
            .thenComparing(Recalled::revision)
            .thenComparing(Recalled::says);

    public JsonOut.Members json(String customerShown) {
        return JsonOut.object()
                .put("order", order)
                .put("state", state.written())
                .put("customer", customerShown)
                .putIfAny("chassis", chassis)
                .put("part", part)
                .put("revision", revision)
                .put("says", says)
                .put("out", out);
    }
}
