package boltlore.catalogue;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What comes on top of the price of bought parts until they lie in the stores.
 *
 * @param country of the workshop (ISO 3166 alpha-2)
 * @param dutyFree origins of which no duty is due, the workshop's own country among them
 * @param dutyOnFreight whether freight is part of the customs value
 * @param suppliers by name; one without an entry delivers free
 */
public record Landing(
        String country,
        Set<String> dutyFree,
        boolean dutyOnFreight,
        List<Duty> duties,
        Map<String, Delivery> suppliers) {

    /** The duty of the closest heading; empty where none covers the goods. Goods of a free origin have none either. */
    public Optional<Duty> duty(Customs customs) {
        return isFree(customs)
                ? Optional.empty()
                : duties.stream().filter(duty -> duty.covers(customs)).max(Comparator.comparingInt(Duty::closeness));
    }

    public boolean isFree(Customs customs) {
        return dutyFree.contains(customs.origin());
    }
}
