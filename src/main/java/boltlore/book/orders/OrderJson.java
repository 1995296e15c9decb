package boltlore.book.orders;

import boltlore.book.Entry;
import boltlore.book.KitLine;
import boltlore.book.OrderStanding;
import boltlore.book.QuotedVersion;
import boltlore.json.JsonOut;

/** Orders of the book as JSON. */
public final class OrderJson {

    private OrderJson() {}

    public static JsonOut.Members standing(OrderStanding order) {
        return JsonOut.object()
                .put("order", order.name())
                .put("family", order.family())
                .put("state", order.state().written())
                .put("customer", order.customer())
                .putIfAny("partner", order.partner())
                .putIfAny("due", order.due())
                .put("version", order.version())
                .put("confirmed", order.confirmed())
                .putIfAny("kit", order.kit())
                .putIfAny("catalogue", order.catalogue())
                .put("changed", order.changed());
    }

    public static JsonOut.Members quotation(QuotedVersion quoted) {
        return JsonOut.object()
                .put("order", quoted.order())
                .put("version", quoted.version())
                .put("offer", quoted.offer().json())
                .put("stands", quoted.stands().json())
                .put("entry", quoted.entry());
    }

    /** What has happened, without who did it by name. */
    public static JsonOut.Members entry(Entry entry) {
        return JsonOut.object()
                .put("entry", entry.number())
                .put("at", Entry.written(entry.stamp().at()))
                .put("desk", entry.stamp().desk())
                .put("person", entry.stamp().person())
                .put("what", entry.subject().what())
                .put("name", entry.subject().name())
                .put("kind", entry.kind())
                .putIfAny("reason", entry.reason());
    }

    public static JsonOut.Members line(KitLine line) {
        return line.json();
    }
}
