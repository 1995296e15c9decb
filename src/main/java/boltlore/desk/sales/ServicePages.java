package boltlore.desk.sales;

import boltlore.book.By;
import boltlore.book.OrderChange;
import boltlore.book.OrderStanding;
import boltlore.book.db.Reading;
import boltlore.book.db.Written;
import boltlore.book.orders.ChangeDesk;
import boltlore.book.orders.ChangeDesk.Additional;
import boltlore.book.orders.OrderDesk;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Parts that are sent after a kit that has left. */
public final class ServicePages {

    private static final int MOST_ADDED = 5;

    private final Workshop workshop;

    ServicePages(Workshop workshop) {
        this.workshop = workshop;
    }

    void open(Doors doors) {
        doors.look(SalesRoom.ORDER + "{order}/service", this::service);
        doors.act(SalesRoom.ORDER + "{order}/service", this::serve);
    }

    private Answer service(Call call) {
        return workshop.book().read(reading -> {
            Outcome<OrderStanding> found = OrderDesk.standing(reading, call.path("order"));
            return found instanceof Outcome.Sound<OrderStanding> sound
                    ? Answer.page(
                            sound.value().name() + ": parts after it has left",
                            "sales/service.jte",
                            serviced(reading, sound.value(), call))
                    : new Answer.Missing(Sentences.missing(found.faults()));
        });
    }

    private Service serviced(Reading reading, OrderStanding standing, Call call) {
        List<Card.Fact> rows = new ArrayList<>();
        for (int at = 0; at < MOST_ADDED; at++) {
            rows.add(new Card.Fact(nth(call, "part", at), nth(call, "quantity", at)));
        }
        return new Service(
                standing.name(),
                reading.persons().shown(standing.customer()),
                workshop.bench().catalogue().workshop().currency().getCurrencyCode(),
                rows);
    }

    private static String nth(Call call, String field, int at) {
        List<String> all = call.all(field);
        return at < all.size() ? all.get(at) : "";
    }

    private Answer serve(Call call) {
        Typed typed = new Typed(call);
        List<Additional> added = new ArrayList<>();
        for (int at = 0; at < MOST_ADDED; at++) {
            String part = nth(call, "part", at);
            if (!part.isEmpty()) {
                String many = nth(call, "quantity", at);
                added.add(new Additional(
                        typed.said("part", "Part", part.toUpperCase(Locale.ROOT), TextShape.PART_NUMBER),
                        many.isEmpty() ? BigDecimal.ONE : typed.number("quantity", "Quantity", many)));
            }
        }
        if (added.isEmpty()) {
            typed.fault("part", "Part", "nothing", "the number of a part at least");
        }
        BigDecimal price = typed.number("price", "Price before tax", call.said("price"));
        String why = typed.reason("reason", "What they are for");
        return Acting.done(
                call,
                ChangePages.path(call),
                by -> typed.sound().then(ok -> serve(call, by, added, price, why)),
                this::service);
    }

    private Outcome<Written<OrderChange>> serve(
            Call call, By by, List<Additional> added, BigDecimal price, String why) {
        return new ChangeDesk(workshop.book(), by)
                .serve(
                        call.path("order"),
                        added,
                        workshop.bench().catalogue(),
                        workshop.bench().catalogue().workshop().currency().getCurrencyCode(),
                        price,
                        why);
    }

    /** Parts for a kit that has left; each row a part and how much of it. */
    public record Service(String number, String customer, String currency, List<Card.Fact> rows) {}
}
