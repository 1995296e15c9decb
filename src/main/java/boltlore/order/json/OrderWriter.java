package boltlore.order.json;

import boltlore.catalogue.Option;
import boltlore.catalogue.ShippedBattery;
import boltlore.catalogue.Station;
import boltlore.catalogue.Transport;
import boltlore.json.JsonOut;
import boltlore.json.PartyReading;
import boltlore.measure.OptionName;
import boltlore.order.Extra;
import boltlore.order.ExtraGoods;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.OrderAddresses;
import boltlore.order.OrderTerms;
import boltlore.order.Waiver;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes an order as the JSON that {@link OrderReader} reads back as an equal one. */
public final class OrderWriter {

    private OrderWriter() {}

    /** The order file's text; its {@code $schema} fits a file in the orders folder of a catalogue. */
    public static String write(Order order) {
        return write(order, "../schema");
    }

    /**
     * The order file's text.
     *
     * @param schemas the way from the file's folder to that of the schemas, with '/' between the steps
     */
    public static String write(Order order, String schemas) {
        JsonOut.Members out = JsonOut.object()
                .put("$schema", schemas + "/" + OrderReader.SCHEMA)
                .put("order", order.name())
                .put("family", order.family())
                .put("customer", order.customer())
                .putIfAny("partner", order.partner())
                .put("language", order.language())
                .putIfAny("donorBuilt", text(order.donorBuilt()))
                .putIfAny("chassis", order.chassis())
                .putIfAny("placed", text(order.placed()))
                .putIfAny("due", text(order.due()))
                .put("choices", choices(order))
                .putIfAny("fixed", order.firm())
                .putIfAny("rank", order.rank())
                .put("leftOut", leftOut(order.leftOut()));
        if (!order.measuredMm().isEmpty()) {
            JsonOut.Members measured = JsonOut.object();
            new TreeMap<>(order.measuredMm()).forEach(measured::put);
            out.put("measured", measured);
        }
        addresses(out, order.addresses());
        return terms(lists(out, order).putIfAny("notes", order.notes()), order.terms())
                .written();
    }

    private static void addresses(JsonOut.Members out, OrderAddresses addresses) {
        if (addresses.consignee() != null) {
            out.put("consignee", PartyReading.written(addresses.consignee()));
        }
        if (addresses.invoice() != null) {
            out.put("invoice", PartyReading.written(addresses.invoice()));
        }
    }

    private static JsonOut.Members lists(JsonOut.Members out, Order order) {
        if (!order.waived().isEmpty()) {
            out.put("waived", JsonOut.list(order.waived(), OrderWriter::waiver));
        }
        if (!order.extra().isEmpty()) {
            out.put("extra", JsonOut.list(order.extra(), OrderWriter::extra));
        }
        return out;
    }

    /** What the build date settles is left out, or it would come back as a choice of the customer's. */
    private static JsonOut choices(Order order) {
        JsonOut.Members choices = JsonOut.object();
        Set<OptionName> groups = new HashSet<>();
        for (Map.Entry<OptionName, String> choice : order.choices().values().entrySet()) {
            OptionName group = wholeGroup(choice.getKey(), order);
            if (group != null && groups.add(group)) {
                choices.put(group.text(), wanted(group, order));
            } else if (group == null && !settled(choice.getKey(), order)) {
                choices.put(choice.getKey().text(), choice.getValue());
            }
        }
        return choices;
    }

    /** What the order's date or chassis number settles is never written as a choice, even where nobody has said them yet. */
    private static boolean settled(OptionName option, Order order) {
        return order.settledByDate().contains(option)
                || order.choices()
                        .family()
                        .option(option)
                        .filter(known -> known.scale() != null)
                        .isPresent();
    }

    /** The question that the option is an answer to, where each of its answers is settled; else null. */
    private static @Nullable OptionName wholeGroup(OptionName option, Order order) {
        Option.Group group =
                order.choices().family().option(option).map(Option::group).orElse(null);
        return group != null
                        && order.choices().family().inGroup(group.name()).stream()
                                .allMatch(each ->
                                        order.choices().value(each.name()).isPresent())
                ? group.name()
                : null;
    }

    private static JsonOut wanted(OptionName group, Order order) {
        return JsonOut.texts(order.choices().family().inGroup(group).stream()
                .filter(option -> order.choices()
                        .value(option.name())
                        .filter(Option.YES::equals)
                        .isPresent())
                .flatMap(option -> Stream.ofNullable(option.group()))
                .map(Option.Group::value)
                .toList());
    }

    private static JsonOut leftOut(LeftOut leftOut) {
        if (leftOut instanceof LeftOut.These these) {
            return JsonOut.texts(List.copyOf(these.lines()));
        }
        if (leftOut instanceof LeftOut.Keep) {
            return JsonOut.text("keep");
        }
        return JsonOut.text(leftOut instanceof LeftOut.AllUnused ? "all" : "undecided");
    }

    private static JsonOut.Members terms(JsonOut.Members out, OrderTerms terms) {
        if (terms.equals(OrderTerms.NONE)) {
            return out;
        }
        String currency = terms.currency() == null ? null : terms.currency().getCurrencyCode();
        JsonOut.Members agreed = JsonOut.object()
                .putIfAny("discountPercent", terms.discountPercent())
                .putIfAny("currency", currency)
                .putIfAny("payment", terms.payment());
        if (terms.delivery() != null) {
            agreed.put("delivery", PartyReading.written(terms.delivery()));
        }
        return out.put("terms", agreed);
    }

    private static JsonOut waiver(Waiver waiver) {
        return JsonOut.object()
                .put("finding", waiver.finding())
                .putIfAny("subject", waiver.subject())
                .put("who", waiver.who())
                .put("when", waiver.when().toString())
                .put("why", waiver.why());
    }

    private static @Nullable BigDecimal number(@Nullable Integer whole) {
        return whole == null ? null : BigDecimal.valueOf(whole);
    }

    private static JsonOut extra(Extra extra) {
        Station at = extra.at();
        JsonOut.Members out = JsonOut.object()
                .putIfAny("part", extra.part() == null ? null : extra.part().text())
                .putIfAny("says", extra.says())
                .put("quantity", extra.quantity())
                .put("unit", extra.unit())
                .putIfAny("cost", extra.cost())
                .putIfAny("price", extra.price())
                .put("suppliedBy", extra.suppliedByCustomer() ? "customer" : "us")
                .put("reason", extra.reason())
                .putIfAny("finish", extra.finish())
                .putIfAny("massKg", extra.massKg())
                .putIfAny("stationMm", at == null ? null : BigDecimal.valueOf(at.behindFrontMm()))
                .putIfAny("heightMm", at == null ? null : number(at.heightMm()));
        return extra.goods() == null ? out : out.put("goods", goods(extra.goods()));
    }

    private static JsonOut goods(ExtraGoods goods) {
        Transport transport = goods.transport();
        if (transport == null) {
            return JsonOut.object().put("none", true);
        }
        JsonOut.Members out = JsonOut.object()
                .put("un", transport.un())
                .putIfAny("class", transport.hazardClass())
                .putIfAny("wattHours", transport.wattHours())
                .putIfAny("netKg", goods.netKg());
        ShippedBattery battery = goods.battery();
        return battery == null ? out : battery(out, battery);
    }

    private static JsonOut battery(JsonOut.Members out, ShippedBattery battery) {
        return out.put("strongCase", battery.strongCase())
                .put("smallRun", battery.smallRun())
                .putIfAny("testSummary", battery.testSummary())
                .putIfAny("chargePercent", battery.chargePercent());
    }

    private static @Nullable String text(@Nullable Object date) {
        return date == null ? null : date.toString();
    }
}
