package boltlore.order;

import boltlore.catalogue.BuildDate;
import boltlore.catalogue.Option;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Changes some of what an order says and keeps all the rest. */
public final class OrderBuilder {

    /** What stands for the number of an order that has none yet. */
    public static final String NO_NUMBER = "draft";

    /** What stands for a customer whom nobody has named yet. */
    public static final String NO_CUSTOMER = "not named yet";

    private String name = NO_NUMBER;
    private String customer = NO_CUSTOMER;
    private String partner = "";
    private String language = "en";
    private @Nullable BuildDate donorBuilt;
    private @Nullable LocalDate placed;
    private @Nullable LocalDate due;
    private Choices choices;
    private SortedSet<OptionName> settledByDate = new TreeSet<>();
    private SortedSet<OptionName> firm = new TreeSet<>();
    private List<OptionName> rank = List.of();
    private LeftOut leftOut = new LeftOut.Undecided();
    private List<Waiver> waived = List.of();
    private List<Extra> extra = List.of();
    private String notes = "";
    private OrderTerms terms = OrderTerms.NONE;
    private Map<String, BigDecimal> measuredMm = Map.of();
    private String chassis = "";
    private OrderAddresses addresses = OrderAddresses.NONE;

    public OrderBuilder(Choices choices) {
        this.choices = choices;
    }

    public OrderBuilder(Order order) {
        this.name = order.name();
        this.customer = order.customer();
        this.partner = order.partner();
        this.language = order.language();
        this.donorBuilt = order.donorBuilt();
        this.placed = order.placed();
        this.due = order.due();
        this.choices = order.choices();
        this.settledByDate = order.settledByDate();
        this.firm = order.firm();
        this.rank = order.rank();
        this.leftOut = order.leftOut();
        this.waived = order.waived();
        this.extra = order.extra();
        this.notes = order.notes();
        this.terms = order.terms();
        this.measuredMm = order.measuredMm();
        this.chassis = order.chassis();
        this.addresses = order.addresses();
    }

    public OrderBuilder name(String other) {
        this.name = other;
        return this;
    }

    public OrderBuilder customer(String other) {
        this.customer = other;
        return this;
    }

    public OrderBuilder partner(String other) {
        this.partner = other;
        return this;
    }

    public OrderBuilder language(String other) {
        this.language = other;
        return this;
    }

    public OrderBuilder donorBuilt(@Nullable BuildDate built) {
        this.donorBuilt = built;
        return this;
    }

    public OrderBuilder placed(@Nullable LocalDate day) {
        this.placed = day;
        return this;
    }

    public OrderBuilder due(@Nullable LocalDate day) {
        this.due = day;
        return this;
    }

    public OrderBuilder choices(Choices other) {
        this.choices = other;
        return this;
    }

    public OrderBuilder settledByDate(SortedSet<OptionName> other) {
        this.settledByDate = other;
        return this;
    }

    public OrderBuilder firm(SortedSet<OptionName> other) {
        this.firm = other;
        return this;
    }

    public OrderBuilder leftOut(LeftOut other) {
        this.leftOut = other;
        return this;
    }

    public OrderBuilder waived(List<Waiver> other) {
        this.waived = List.copyOf(other);
        return this;
    }

    public OrderBuilder terms(OrderTerms other) {
        this.terms = other;
        return this;
    }

    public OrderBuilder measuredMm(Map<String, BigDecimal> other) {
        this.measuredMm = Map.copyOf(other);
        return this;
    }

    public OrderBuilder chassis(String number) {
        this.chassis = number;
        return this;
    }

    public OrderBuilder addresses(OrderAddresses other) {
        this.addresses = other;
        return this;
    }

    /** The order, with what its date and chassis number settle. */
    public Order build() {
        Order order = plain();
        Choices settled = choices;
        SortedSet<OptionName> byDate = new TreeSet<>(settledByDate);
        for (Option option : choices.family().options()) {
            Integer at = option.scale() == null ? null : order.at(option.scale().by());
            if (option.scale() != null && at != null) {
                settled = settled.with(option.name(), option.scale().at(at));
                byDate.add(option.name());
            }
        }
        this.choices = settled;
        this.settledByDate = byDate;
        return plain();
    }

    private Order plain() {
        return new Order(
                name,
                choices.family().name(),
                customer,
                partner,
                language,
                donorBuilt,
                placed,
                due,
                choices,
                settledByDate,
                firm,
                rank,
                leftOut,
                waived,
                extra,
                notes,
                terms,
                measuredMm,
                chassis,
                addresses);
    }
}
