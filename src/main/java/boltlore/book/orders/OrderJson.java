package boltlore.book.orders;

import boltlore.book.BuiltNote;
import boltlore.book.BuiltPart;
import boltlore.book.BuiltReading;
import boltlore.book.Entry;
import boltlore.book.KitLine;
import boltlore.book.OrderChange;
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
                .putIfAny("catalogue", order.catalogue());
    }

    public static JsonOut.Members quotation(QuotedVersion quoted) {
        return JsonOut.object()
                .put("order", quoted.order())
                .put("version", quoted.version())
                .put("offer", quoted.offer().json())
                .put("stands", quoted.stands().json())
                .put("entry", quoted.entry());
    }

    public static JsonOut.Members change(OrderChange change) {
        return JsonOut.object()
                .put("order", change.order())
                .put("number", change.number())
                .put("asker", change.asker())
                .put("state", change.state().written())
                .putIfAny("reason", change.reason())
                .put("currency", change.currency())
                .put("net", change.net())
                .put("leadDays", change.leadDays())
                .put("entry", change.entry());
    }

    public static JsonOut.Members built(BuiltPart part) {
        return JsonOut.object()
                .put("entry", part.entry())
                .put("part", part.part())
                .put("revision", part.revision())
                .put("quantity", part.quantity())
                .putIfAny("serial", part.serial())
                .putIfAny("lot", part.lot())
                .putIfAny("heat", part.heat())
                .put("out", part.out() > 0);
    }

    public static JsonOut.Members reading(BuiltReading reading) {
        return JsonOut.object()
                .put("entry", reading.entry())
                .put("of", reading.measured().of())
                .put("value", reading.measured().value())
                .put("unit", reading.measured().unit())
                .putIfAny("least", reading.measured().least())
                .putIfAny("most", reading.measured().most())
                .put("within", reading.measured().within())
                .put("person", reading.person());
    }

    public static JsonOut.Members note(BuiltNote note) {
        return JsonOut.object()
                .put("entry", note.entry())
                .put("what", note.what())
                .put("of", note.of())
                .put("says", note.says())
                .put("person", note.person());
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
