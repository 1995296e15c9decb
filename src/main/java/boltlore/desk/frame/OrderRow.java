package boltlore.desk.frame;

import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.db.Reading;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * An order of the book in a list of them.
 *
 * @param kit what kits of its family are called
 * @param due day as 2026-06-19, or empty
 * @param late whether it is owed and its day is past
 * @param customer the name, or that it is erased
 */
public record OrderRow(String number, String kit, String state, String due, boolean late, String customer) {

    private static final int MOST = 200;
    private static final int MOST_LISTED = 2000;
    private static final int AT_ONCE = 40;

    /** First what is due first; at most 200. */
    public static List<OrderRow> list(Workshop workshop, Reading reading, List<OrderState> states, LocalDate today) {
        List<OrderStanding> orders = reading.orders().in(states, MOST);
        Map<String, String> names = reading.persons()
                .shown(orders.stream().map(OrderStanding::customer).toList());
        return orders.stream()
                .map(order -> of(workshop, order, names.getOrDefault(order.customer(), order.customer()), today))
                .toList();
    }

    /** Some of them at a time, at most 2,000; what more is said of each is asked of those alone that are shown. */
    public static Stretch<OrderRow> stretch(
            Workshop workshop, Reading reading, List<OrderState> states, Call call, String path) {
        return Stretch.of(reading.orders().in(states, MOST_LISTED), call, AT_ONCE, path)
                .map(order -> of(workshop, order, reading.persons().shown(order.customer()), call.today()));
    }

    /** Those of a vehicle's chassis number, or of customers whose names hold the words, at most 200, in whatever state. */
    public static List<OrderRow> found(Workshop workshop, Reading reading, String words, LocalDate today) {
        Stream<OrderStanding> ofVehicle =
                reading.asBuilt().ofChassis(words).stream().flatMap(order -> reading.orders().find(order).stream());
        Stream<OrderStanding> ofCustomers = reading.persons().with(words, 0, MOST).stream()
                .flatMap(person -> reading.orders().ofCustomer(person.key()).stream());
        return Stream.concat(ofVehicle, ofCustomers)
                .distinct()
                .limit(MOST)
                .map(order -> of(workshop, order, reading.persons().shown(order.customer()), today))
                .toList();
    }

    /** Days as they are written (ISO 8601) sort as the days do. */
    private static OrderRow of(Workshop workshop, OrderStanding order, String customer, LocalDate today) {
        boolean late =
                order.state().owed() && !order.due().isEmpty() && order.due().compareTo(today.toString()) < 0;
        return new OrderRow(
                order.name(),
                workshop.names().kit(order.family()),
                order.state().written(),
                order.due(),
                late,
                customer);
    }
}
