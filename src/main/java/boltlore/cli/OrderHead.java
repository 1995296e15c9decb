package boltlore.cli;

import boltlore.asking.AskedHead;
import boltlore.catalogue.BuildDate;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What an order says beside its choices, as far as it is given on the command line; the rest is asked. */
final class OrderHead {

    @Option(names = "--order", paramLabel = "NUMBER", description = "The order's number; asked where it is not given.")
    private @Nullable String number;

    @Option(names = "--customer", paramLabel = "NAME", description = "The customer; asked where it is not given.")
    private @Nullable String customer;

    @Option(names = "--partner", paramLabel = "NAME", description = "The partner workshop that it goes through.")
    private @Nullable String partner;

    @Option(
            names = "--built",
            paramLabel = "DATE",
            converter = SaidDate.class,
            description = "When the base vehicle was built, as 1971-05-20, 1971-05 or 1971.")
    private @Nullable BuildDate built;

    @Option(
            names = "--placed",
            paramLabel = "DATE",
            converter = Day.class,
            description = "The date of the order; without it today.")
    private @Nullable LocalDate placed;

    @Option(
            names = "--chassis",
            paramLabel = "NUMBER",
            description =
                    "The chassis number, which ends with its running number; asked where a line holds from one on.")
    private @Nullable String chassis;

    @Option(
            names = "--due",
            paramLabel = "DATE",
            converter = Day.class,
            description = "When the kit is due, as 2027-03-12.")
    private @Nullable LocalDate due;

    @Option(
            names = "--discount",
            paramLabel = "PERCENT",
            converter = DiscountGiven.class,
            description = "Discount in per cent, in place of the partner's.")
    private @Nullable BigDecimal discount;

    @Option(
            names = "--brackets",
            paramLabel = "out|keep",
            description = "What becomes of brackets that support nothing in the kit; asked where there are any.")
    private @Nullable String brackets;

    @Option(
            names = "--language",
            paramLabel = "CODE",
            description = "The language of the papers; without it that of labels and manuals, or the partner's.")
    private @Nullable String language;

    @Option(
            names = "--out",
            paramLabel = "ORDER.json",
            description = "The file to write, which must not exist; without it the order's number here.")
    private @Nullable Path out;

    @Nullable
    Path out() {
        return out;
    }

    /**
     * The order with what was given, or all that is wrong with it.
     *
     * @param usual its date where none is said
     */
    Outcome<Order> in(Order order, @Nullable LocalDate usual, Catalogue catalogue) {
        LocalDate day = placed != null ? placed : order.placed() != null ? order.placed() : usual;
        Order dated = new OrderBuilder(order).placed(day).build();
        Outcome<Order> said = Outcome.sound(dated);
        for (Map.Entry<AskedHead, @Nullable Object> given : given().entrySet()) {
            Object value = given.getValue();
            if (value != null) {
                said = said.then(before -> given.getKey().said(before, value.toString(), catalogue));
            }
        }
        return said;
    }

    private Map<AskedHead, @Nullable Object> given() {
        Map<AskedHead, @Nullable Object> given = new EnumMap<>(AskedHead.class);
        given.put(AskedHead.BUILT, built);
        given.put(AskedHead.CHASSIS, chassis);
        given.put(AskedHead.NUMBER, number);
        given.put(AskedHead.CUSTOMER, customer);
        given.put(AskedHead.DUE, due);
        given.put(AskedHead.PARTNER, partner);
        given.put(AskedHead.DISCOUNT, discount == null ? null : discount.toPlainString());
        given.put(AskedHead.BRACKETS, brackets);
        given.put(AskedHead.LANGUAGE, language);
        return given;
    }
}
