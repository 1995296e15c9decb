package boltlore.book.orders;

import boltlore.book.Person;
import boltlore.book.PersonHappening;
import boltlore.book.db.Persons;
import boltlore.book.db.Writing;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import boltlore.order.Waiver;
import boltlore.order.json.OrderWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * An order with keys where the names of persons stood, so that what is kept for ever holds none.
 *
 * @param order whose customer, and who waived something, are keys
 */
record KeyedOrder(Order order) {

    /** Takes persons down who are not known yet; faulty where a name may be several customers'. */
    static Outcome<KeyedOrder> of(Writing writing, Order order) {
        List<Person> known = writing.persons().named(order.customer(), Person.CUSTOMER);
        if (known.size() > 1) {
            String keys = known.stream().map(Person::key).collect(Collectors.joining(", "));
            return Outcome.faulty(Fault.of(
                    "order " + order.name(),
                    "the customer '" + order.customer() + "', which several have as their name (" + keys + ")",
                    "one customer",
                    "Say which with --customer KEY; 'boltlore person list' shows them."));
        }
        KeptPlaces places =
                new KeptPlaces(known.isEmpty() ? new TreeMap<>() : known.get(0).details());
        Order placed = places.keyed(order);
        String key = known.isEmpty()
                ? writing.addPerson(Person.CUSTOMER, order.customer(), places.details())
                        .key()
                : withPlaces(writing, known.get(0), places);
        return Outcome.sound(new KeyedOrder(named(placed, name -> key, name -> staff(writing, name))));
    }

    private static String withPlaces(Writing writing, Person customer, KeptPlaces places) {
        if (!places.details().equals(customer.details())) {
            writing.changePerson(customer.with(places.details()), PersonHappening.What.CHANGED, "");
        }
        return customer.key();
    }

    private static String staff(Writing writing, String name) {
        List<Person> known = writing.persons().named(name, Person.STAFF);
        return known.isEmpty()
                ? writing.addPerson(Person.STAFF, name, new TreeMap<>()).key()
                : known.get(0).key();
    }

    /** The order with the names again, as far as they are not erased. */
    static Order named(Order keyed, Persons persons) {
        return named(KeptPlaces.named(keyed, persons), persons::shown, persons::shown);
    }

    private static Order named(Order order, UnaryOperator<String> customer, UnaryOperator<String> who) {
        List<Waiver> waived = order.waived().stream()
                .map(each -> new Waiver(each.finding(), each.subject(), who.apply(each.who()), each.when(), each.why()))
                .toList();
        return new OrderBuilder(order)
                .customer(customer.apply(order.customer()))
                .waived(waived)
                .build();
    }

    byte[] content() {
        return OrderWriter.write(order).getBytes(StandardCharsets.UTF_8);
    }
}
