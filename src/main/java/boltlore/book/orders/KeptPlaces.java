package boltlore.book.orders;

import boltlore.book.Person;
import boltlore.book.db.Persons;
import boltlore.measure.Party;
import boltlore.order.Order;
import boltlore.order.OrderAddresses;
import boltlore.order.OrderBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The places of a customer, to which crates and invoices go, among the details of the person: 'place-1-line-1',
 * 'place-1-phone' …, so that they are listed, corrected, handed out and erased with the person. An order that is kept for
 * ever names the place only, and its country, which is nobody's secret.
 */
final class KeptPlaces {

    private static final String PLACE = "place-";

    private final SortedMap<String, String> details;

    KeptPlaces(SortedMap<String, String> details) {
        this.details = new TreeMap<>(details);
    }

    /** The details with all places that were taken down. */
    SortedMap<String, String> details() {
        return details;
    }

    /** The order with the names of places where they stood; a place that is not known yet is taken down. */
    Order keyed(Order order) {
        OrderAddresses all = order.addresses();
        return new OrderBuilder(order)
                .addresses(new OrderAddresses(keyed(all.consignee()), keyed(all.invoice())))
                .build();
    }

    private @Nullable Party keyed(@Nullable Party party) {
        if (party == null) {
            return null;
        }
        int place = 1;
        while (read(PLACE + place)
                .filter(known -> !known.equals(without(party)))
                .isPresent()) {
            place++;
        }
        write(PLACE + place, party);
        return new Party(PLACE + place, List.of("kept with the person"), party.country());
    }

    private static Party without(Party party) {
        return new Party(
                party.name(),
                party.address(),
                "",
                party.contact(),
                party.phone(),
                party.email(),
                party.taxNumber(),
                party.eori());
    }

    private void write(String place, Party party) {
        put(place + "-name", party.name());
        for (int i = 0; i < party.address().size(); i++) {
            put(place + "-line-" + (i + 1), party.address().get(i));
        }
        put(place + "-contact", party.contact());
        put(place + "-phone", party.phone());
        put(place + "-email", party.email());
        put(place + "-tax-number", party.taxNumber());
        put(place + "-eori", party.eori());
    }

    private void put(String key, String text) {
        if (!text.isEmpty()) {
            details.put(key, text);
        }
    }

    private Optional<Party> read(String place) {
        List<String> lines = new ArrayList<>();
        details.tailMap(place + "-line-").forEach((key, text) -> {
            if (key.startsWith(place + "-line-")) {
                lines.add(text);
            }
        });
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new Party(
                        said(place + "-name"),
                        lines,
                        "",
                        said(place + "-contact"),
                        said(place + "-phone"),
                        said(place + "-email"),
                        said(place + "-tax-number"),
                        said(place + "-eori")));
    }

    private String said(String key) {
        return details.getOrDefault(key, "");
    }

    /** The order with its places again, as far as they are not erased. */
    static Order named(Order keyed, Persons persons) {
        OrderAddresses all = keyed.addresses();
        if (all.equals(OrderAddresses.NONE)) {
            return keyed;
        }
        KeptPlaces places = new KeptPlaces(
                persons.find(keyed.customer()).map(Person::details).orElseGet(TreeMap::new));
        return new OrderBuilder(keyed)
                .addresses(new OrderAddresses(places.named(all.consignee()), places.named(all.invoice())))
                .build();
    }

    /** An address that is erased leaves the order without one, which then says so as any such order does. */
    private @Nullable Party named(@Nullable Party keyed) {
        return keyed == null
                ? null
                : read(keyed.name())
                        .map(place -> new Party(
                                place.name(),
                                place.address(),
                                keyed.country(),
                                place.contact(),
                                place.phone(),
                                place.email(),
                                place.taxNumber(),
                                place.eori()))
                        .orElse(null);
    }
}
