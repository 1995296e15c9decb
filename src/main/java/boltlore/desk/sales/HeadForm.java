package boltlore.desk.sales;

import boltlore.asking.AskedHead;
import boltlore.asking.BuiltSaid;
import boltlore.catalogue.Catalogue;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Typed;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import boltlore.order.OrderTerms;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What an order says beside its choices, as a form says it: fields that are not on the form stay as they are. */
final class HeadForm {

    private static final Set<AskedHead> FIELDS = EnumSet.of(
            AskedHead.NUMBER,
            AskedHead.CUSTOMER,
            AskedHead.BUILT,
            AskedHead.CHASSIS,
            AskedHead.DUE,
            AskedHead.PARTNER,
            AskedHead.DISCOUNT,
            AskedHead.BRACKETS,
            AskedHead.LANGUAGE);

    private final Catalogue catalogue;

    HeadForm(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The order with all fields, or what is wrong with each of them. */
    Outcome<Order> said(Call call, Order order) {
        List<Fault> faults = new ArrayList<>();
        Order said = order;
        for (AskedHead head : FIELDS) {
            if (call.said().containsKey(head.command())) {
                Outcome<Order> one = one(head, call.said(head.command()), said, call.today());
                one.faults().forEach(fault -> faults.add(Typed.at(head.command(), fault)));
                said = one instanceof Outcome.Sound<Order> sound ? sound.value() : said;
            }
        }
        Outcome<Order> measured = measured(call, said);
        faults.addAll(measured.faults());
        return faults.isEmpty() ? measured : Outcome.faulty(faults);
    }

    private Outcome<Order> one(AskedHead head, String text, Order order, LocalDate today) {
        if (!text.isEmpty()) {
            return text.equals(shown(head, order))
                    ? Outcome.sound(order)
                    : inTime(head, text, order, today).then(ok -> head.said(order, text, catalogue));
        }
        OrderBuilder without = new OrderBuilder(order);
        return switch (head) {
            case BUILT -> Outcome.sound(BuiltSaid.without(order));
            case CHASSIS -> Outcome.sound(without.chassis("").build());
            case DUE -> Outcome.sound(without.due(null).build());
            case PARTNER -> Outcome.sound(without.partner("").build());
            case DISCOUNT ->
                Outcome.sound(without.terms(new OrderTerms(null, order.terms().currency()))
                        .build());
            case BRACKETS -> Outcome.sound(order);
            default -> Outcome.faulty(Fault.of("", "nothing", head.asks(), ""));
        };
    }

    /** Nobody promises a kit for a day that is past. */
    private Outcome<Order> inTime(AskedHead head, String text, Order order, LocalDate today) {
        if (head != AskedHead.DUE) {
            return Outcome.sound(order);
        }
        Order unplaced = new OrderBuilder(order).placed(null).build();
        return head.said(unplaced, text, catalogue).then(said -> {
            LocalDate due = said.due();
            return due != null && due.isBefore(today)
                    ? Outcome.faulty(
                            Fault.of("Due", due + ", which is past", "today, " + today + ", or a later day", ""))
                    : Outcome.sound(said);
        });
    }

    /** As the form shows it before anybody has changed it; empty where the order does not say. */
    static String shown(AskedHead head, Order order) {
        BigDecimal discount = order.terms().discountPercent();
        return switch (head) {
            case BUILT -> text(order.donorBuilt());
            case CHASSIS -> order.chassis();
            case DUE -> text(order.due());
            case PARTNER -> order.partner();
            case DISCOUNT -> discount == null ? "" : Digits.plain(discount);
            case LANGUAGE -> order.language();
            case CUSTOMER -> order.customer();
            case NUMBER -> order.name();
            default -> "";
        };
    }

    private static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }

    private static Outcome<Order> at(String field, Outcome<Order> said) {
        return said.faults().isEmpty()
                ? said
                : Outcome.faulty(said.faults().stream()
                        .map(fault -> Typed.at(field, fault))
                        .toList());
    }

    private Outcome<Order> measured(Call call, Order order) {
        String prefix = AskedHead.MEASURED.command() + "-";
        Map<String, String> said = new TreeMap<>();
        call.said().keySet().stream()
                .filter(field -> field.startsWith(prefix) && !call.said(field).isEmpty())
                .forEach(field -> said.put(
                        field.substring(prefix.length()), call.said(field).replace(',', '.')));
        Outcome<Order> measured = Outcome.sound(order);
        for (Map.Entry<String, String> each : said.entrySet()) {
            measured = measured.then(before -> at(
                    prefix + each.getKey(),
                    AskedHead.MEASURED.said(before, each.getKey() + " " + each.getValue(), catalogue)));
        }
        return measured;
    }
}
