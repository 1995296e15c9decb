package boltlore.book.orders;

import boltlore.book.KitDifference;
import boltlore.book.OrderChange;
import boltlore.book.OrderStanding;
import boltlore.book.QuotedVersion;
import boltlore.book.db.Contents;
import boltlore.book.db.Reading;
import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What a change of a frozen order comes to: the evaluation of its consequences (ISO 10007:2017, 5.4).
 *
 * @param change as it was proposed
 * @param said what the order says otherwise
 * @param kit what comes in and goes out
 * @param done what of it was bought, cut, coated or picked already, of pieces that go out
 * @param netDifference what the customer pays more, before tax, in the currency of the change; null where the price before
 *     was in another
 * @param costDifference what it costs the workshop more, in the workshop's currency; null of a service order
 * @param costCurrency code (ISO 4217), or empty
 * @param dayDifference by which the lead time of the whole kit changes
 */
public record ChangeEffect(
        OrderChange change,
        List<VersionsDiffer.Said> said,
        KitDifference kit,
        List<Done> done,
        @Nullable BigDecimal netDifference,
        @Nullable BigDecimal costDifference,
        String costCurrency,
        int dayDifference) {

    /** A piece that goes out although work was done on it. */
    public record Done(KitDifference.Piece piece, String stage, BigDecimal quantity) {

        /** '2 PV-CR-E rev. B: coated already'. */
        @Override
        public String toString() {
            return quantity.toPlainString() + " " + piece + ": " + stage + " already";
        }
    }

    /** Before and after as the order stood when the change was proposed. */
    public static ChangeEffect of(Reading reading, OrderStanding order, OrderChange change) {
        boolean service = change.asker().equals(OrderChange.SERVICE);
        KitDifference kit = KitDifference.of(
                reading.orders().lines(change.from()),
                reading.orders().lines(change.stands().kit()));
        if (service) {
            return new ChangeEffect(change, List.of(), kit, List.of(), change.net(), null, "", 0);
        }
        Price before = before(reading, order, change);
        return new ChangeEffect(
                change,
                VersionsDiffer.said(
                        reading.contents().of(before.content()),
                        reading.contents().of(change.stands().order())),
                kit,
                done(kit, reading.changes().workOn(order.name())),
                before.currency().equals(change.currency()) ? change.net().subtract(before.net()) : null,
                full(reading.contents(), change.stands().cost()).subtract(full(reading.contents(), before.cost())),
                cost(reading.contents(), change.stands().cost(), "currency"),
                change.leadDays() - before.leadDays());
    }

    /** What the order stood on before the change. */
    private record Price(String content, String currency, BigDecimal net, int leadDays, String cost) {}

    private static Price before(Reading reading, OrderStanding order, OrderChange change) {
        Optional<OrderChange> last = reading.changes().of(order.name()).stream()
                .filter(each -> each.number() < change.number())
                .filter(each -> each.stands().kit().equals(change.from())
                        && !each.stands().cost().isEmpty())
                .filter(each -> switch (each.state()) {
                    case ACCEPTED, CARRIED_OUT -> true;
                    case PROPOSED, DROPPED -> false;
                })
                .reduce((one, other) -> other);
        if (last.isPresent()) {
            OrderChange each = last.get();
            return new Price(
                    each.stands().order(),
                    each.currency(),
                    each.net(),
                    each.leadDays(),
                    each.stands().cost());
        }
        QuotedVersion quoted = reading.orders().quotations(order.name()).stream()
                .filter(each -> each.version() == order.confirmed())
                .findFirst()
                .orElseThrow();
        return new Price(
                quoted.stands().order(),
                quoted.offer().currency(),
                quoted.offer().net(),
                quoted.offer().leadDays(),
                quoted.stands().cost());
    }

    private static List<Done> done(KitDifference kit, Map<KitDifference.Piece, SortedMap<String, BigDecimal>> work) {
        List<Done> done = new ArrayList<>();
        kit.changes().stream()
                .filter(each -> !each.comesIn())
                .forEach(each -> work.getOrDefault(each.piece(), new TreeMap<>())
                        .forEach((stage, quantity) -> {
                            // Of a piece that stays in part, what stays is taken from what was worked on.
                            BigDecimal lost = quantity.subtract(each.after());
                            if (lost.signum() > 0) {
                                done.add(new Done(each.piece(), stage, lost.min(each.amount())));
                            }
                        }));
        return done;
    }

    private static BigDecimal full(Contents contents, String hash) {
        String full = cost(contents, hash, "full");
        return full.isEmpty() ? BigDecimal.ZERO : new BigDecimal(full);
    }

    private static String cost(Contents contents, String hash, String key) {
        return JsonFile.parse(hash, contents.of(hash)) instanceof Outcome.Sound<Json> sound
                        && sound.value() instanceof Json.Obj cost
                        && cost.members().get(key) instanceof Json.Text text
                ? text.text()
                : "";
    }

    public JsonOut.Members json() {
        JsonOut.Members json = OrderJson.change(change)
                .put(
                        "said",
                        JsonOut.texts(
                                said.stream().map(VersionsDiffer.Said::toString).toList()))
                .put("kit", JsonOut.list(kit.changes(), KitDifference.Change::json))
                .put(
                        "done",
                        JsonOut.list(
                                done,
                                each -> JsonOut.object()
                                        .put("part", each.piece().part())
                                        .put("revision", each.piece().revision())
                                        .putIfAny("finish", each.piece().finish())
                                        .put("stage", each.stage())
                                        .put("quantity", each.quantity())));
        return json.putIfAny("netDifference", netDifference)
                .putIfAny("costDifference", costDifference)
                .putIfAny("costCurrency", costCurrency)
                .put("dayDifference", dayDifference);
    }
}
