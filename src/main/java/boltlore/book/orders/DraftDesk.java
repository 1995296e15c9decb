package boltlore.book.orders;

import boltlore.book.By;
import boltlore.book.Entry;
import boltlore.book.Happening;
import boltlore.book.OrderHappening;
import boltlore.book.OrderStanding;
import boltlore.book.Stamp;
import boltlore.book.Subject;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.OptionName;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The calls on a draft that is asked for question by question. Each change is in the book at once, says which draft it was
 * made from, and can be taken back as often as there are changes, by whoever comes to it.
 */
public final class DraftDesk {

    /** The reason of an entry that puts an earlier draft in the place of the last. */
    private static final String TAKEN_BACK = "taken back";

    private final Book book;
    private final By by;

    public DraftDesk(Book book, By by) {
        this.book = book;
        this.by = by;
    }

    /**
     * An order as it was last taken down.
     *
     * @param order whose persons are named by their keys
     * @param customer the name, or that it is erased
     * @param newest options that were answered, the last answer first
     * @param earlier hashes of the drafts that it can go back to, the last one first
     * @param last who took it down last
     */
    public record Draft(
            OrderStanding standing,
            Order order,
            String customer,
            List<OptionName> newest,
            List<String> earlier,
            Stamp last) {

        public Draft {
            newest = List.copyOf(newest);
            earlier = List.copyOf(earlier);
        }

        /** Names what is seen, so that a change says what it was made from. */
        public String seen() {
            return standing.draft();
        }
    }

    /** The draft of an order; faulty where the present catalogue cannot read it any more. */
    public static Outcome<Draft> draft(Reading reading, Bench bench, String name) {
        return OrderDesk.standing(reading, name)
                .then(standing -> bench.order(name, reading.contents().of(standing.draft()))
                        .then(order -> history(reading, name)
                                .then(past -> Outcome.sound(new Draft(
                                        standing,
                                        order,
                                        reading.persons().shown(standing.customer()),
                                        past.newest(),
                                        past.earlier(),
                                        past.last())))));
    }

    /** Takes down an order that is not in the book yet. */
    public Outcome<Written<OrderStanding>> begin(Order order) {
        return book.write(by, writing -> {
            if (writing.orders().find(order.name()).isPresent()) {
                return Outcome.faulty(Fault.of(
                        "", "the order number '" + order.name() + "', which is taken", "a number of its own", ""));
            }
            return OrderDesk.ofItsOwn(writing, order.name())
                    .then(own -> KeyedOrder.of(writing, order))
                    .then(keyed -> taken(writing, keyed, ""));
        });
    }

    /**
     * Puts an order in the place of the draft that was seen; faulty where somebody was faster.
     *
     * @param order whose persons are named by their keys; a customer's name in the place of a key is another customer
     */
    public Outcome<Written<OrderStanding>> change(String seen, Order order) {
        return book.write(
                by,
                writing -> seen(writing, order.name(), seen)
                        .then(standing -> keyed(writing, standing, order))
                        .then(keyed -> taken(writing, keyed, "")));
    }

    /** Takes the last change back. */
    public Outcome<Written<OrderStanding>> back(String name, String seen, Bench bench) {
        return book.write(
                by,
                writing -> seen(writing, name, seen)
                        .then(standing -> history(writing, name))
                        .then(past -> past.earlier().isEmpty()
                                ? Outcome.faulty(
                                        Fault.of("", "no earlier draft", "a change that can be taken back", ""))
                                : bench.order(
                                                name,
                                                writing.contents()
                                                        .of(past.earlier().get(0)))
                                        .then(order -> taken(writing, new KeyedOrder(order), TAKEN_BACK))));
    }

    private static Outcome<KeyedOrder> keyed(Writing writing, OrderStanding standing, Order order) {
        return order.customer().equals(standing.customer())
                ? Outcome.sound(new KeyedOrder(order))
                : KeyedOrder.of(
                        writing,
                        new OrderBuilder(KeyedOrder.named(order, writing.persons()))
                                .customer(order.customer())
                                .build());
    }

    private static Outcome<OrderStanding> taken(Writing writing, KeyedOrder keyed, String reason) {
        String content = writing.keep(keyed.content());
        OrderStanding known = writing.orders().find(keyed.order().name()).orElse(null);
        if (known == null || !known.draft().equals(content)) {
            writing.add(OrderDesk.drafted(keyed.order(), content), reason);
        }
        return OrderDesk.standing(writing, keyed.order().name());
    }

    private static Outcome<OrderStanding> seen(Reading reading, String name, String seen) {
        return OrderDesk.standing(reading, name).then(standing -> {
            if (!standing.state().open()) {
                return Outcome.faulty(Fault.of(
                        "order " + name, "'" + standing.state().written() + "'", "a draft or a quoted order", ""));
            }
            return standing.draft().equals(seen)
                    ? Outcome.sound(standing)
                    : history(reading, name)
                            .then(past -> Outcome.faulty(Fault.of(
                                    "order " + name,
                                    "a draft that "
                                            + reading.persons()
                                                    .shown(past.last().person())
                                            + " at " + past.last().desk() + " has changed meanwhile",
                                    "the draft that this was answered to",
                                    "It stands here as it is now; answer again if it still holds.")));
        });
    }

    private record Past(List<OptionName> newest, List<String> earlier, Stamp last) {}

    /**
     * One draft after the other; where one was taken back, the one before it is the newest again. What was quoted is a
     * promise: nobody goes back past it unawares.
     */
    private static Outcome<Past> history(Reading reading, String name) {
        Deque<OrderHappening.Drafted> drafts = new ArrayDeque<>();
        int quoted = 1;
        Entry last = null;
        for (Entry entry : reading.journal().of(new Subject(OrderHappening.WHAT, name))) {
            Outcome<Happening> happening = entry.happening();
            if (!happening.faults().isEmpty()) {
                return Outcome.faulty(happening.faults());
            }
            if (happening instanceof Outcome.Sound<Happening> sound
                    && sound.value() instanceof OrderHappening.Drafted drafted) {
                if (entry.reason().equals(TAKEN_BACK) && !drafts.isEmpty()) {
                    drafts.pop();
                } else {
                    drafts.push(drafted);
                }
                last = entry;
            } else if (happening instanceof Outcome.Sound<Happening> sound
                    && sound.value() instanceof OrderHappening.Quoted) {
                quoted = Math.max(1, drafts.size());
            }
        }
        List<String> earlier = drafts.stream()
                .skip(1)
                .limit(Math.max(0, drafts.size() - quoted))
                .map(OrderHappening.Drafted::content)
                .toList();
        return Outcome.sound(
                new Past(newest(drafts), earlier, Objects.requireNonNull(last).stamp()));
    }

    private static List<OptionName> newest(Deque<OrderHappening.Drafted> newestFirst) {
        List<OptionName> answered = new ArrayList<>();
        SortedMap<String, String> before = new TreeMap<>();
        List<OrderHappening.Drafted> oldestFirst = new ArrayList<>(newestFirst);
        Collections.reverse(oldestFirst);
        for (OrderHappening.Drafted drafted : oldestFirst) {
            for (Map.Entry<String, String> choice : drafted.choices().entrySet()) {
                if (!choice.getValue().equals(before.get(choice.getKey()))) {
                    OptionName option = new OptionName(choice.getKey());
                    answered.remove(option);
                    answered.add(0, option);
                }
            }
            before = drafted.choices();
        }
        return answered;
    }
}
