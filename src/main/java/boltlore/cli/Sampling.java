package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.choices.Choices;
import boltlore.exports.SheetSet;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.logic.Deadline;
import boltlore.measure.Money;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.proof.Witnesses;
import boltlore.proof.sample.CoveringSample;
import boltlore.proof.sample.Sampler;
import boltlore.trades.costing.Pricing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Variants to build on the bench: a family's covering sample as orders, with what their kits cost. */
final class Sampling {

    /** How many values at a time. */
    enum Ways {
        PAIRS(2),
        THREES(3);

        private final int values;

        Ways(int values) {
            this.values = values;
        }
    }

    private static final int MOST_NAMED = 12;

    private final CatalogueSession session;
    private final Family family;
    private final Ways ways;
    private final CoveringSample sample;
    private final List<Order> orders = new ArrayList<>();
    private final List<Optional<BigDecimal>> costs = new ArrayList<>();

    private Sampling(CatalogueSession session, Family family, Ways ways, CoveringSample sample) {
        this.session = session;
        this.family = family;
        this.ways = ways;
        this.sample = sample;
        for (Choices choices : sample.orders()) {
            String name = String.format(Locale.ROOT, "%s-trial-%03d", family.name(), orders.size() + 1);
            Order order = Witnesses.complete(catalogue(), name, choices, new LeftOut.AllUnused(), "A trial build.");
            orders.add(order);
            costs.add(cost(order));
        }
    }

    /** Empty where the family is too large for that many values at a time. */
    static Optional<Sampling> of(CatalogueSession session, Family family, Ways ways, Deadline until) {
        return Sampler.draw(family, ways.values, until).map(sample -> new Sampling(session, family, ways, sample));
    }

    private Catalogue catalogue() {
        return session.catalogue();
    }

    /** Empty where a finding stops the order's sheets. */
    private Optional<BigDecimal> cost(Order order) {
        return OrderKit.of(session.resolver(), order, false) instanceof Outcome.Sound<OrderKit> kit
                        && kit.value().bill() != null
                        && !kit.value().resolution().stops()
                ? Optional.of(
                        Pricing.cost(kit.value().bill(), catalogue()).totals().cost())
                : Optional.empty();
    }

    boolean complete() {
        return sample.complete();
    }

    /** The variants as order files. */
    SheetSet files() {
        return new SheetSet(
                "prove --bench " + family.name(),
                orders.stream().map(ProofResults::file).toList(),
                complete());
    }

    void print(Screen screen) {
        screen.heading(family.name() + ": " + orders.size() + " trial builds have all "
                + sample.coverable() + (ways == Ways.PAIRS ? " pairs" : " threes")
                + " of values that any valid order has" + (complete() ? "" : ", as far as the time went"));
        for (int i = 0; i < orders.size(); i++) {
            screen.wrapped(2, orders.get(i).name() + ": " + money(costs.get(i)) + ": " + chosen(orders.get(i)));
        }
        screen.wrapped(
                2,
                "Direct cost of these kits together: " + money(Optional.of(total()))
                        + ", all unused brackets left out.");
        if (!sample.uncoverable().isEmpty()) {
            screen.wrapped(
                    2,
                    sample.uncoverable().size() + " combinations no valid order has, for one: "
                            + sample.uncoverable().stream()
                                    .limit(MOST_NAMED)
                                    .map(Object::toString)
                                    .collect(Collectors.joining(", "))
                            + (sample.uncoverable().size() > MOST_NAMED ? ", … (--json names all)" : ""));
        }
    }

    private static String chosen(Order order) {
        return order.choices().values().entrySet().stream()
                .map(choice -> choice.getKey() + "=" + choice.getValue())
                .collect(Collectors.joining(", "));
    }

    private BigDecimal total() {
        return costs.stream().flatMap(Optional::stream).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private String money(Optional<BigDecimal> cost) {
        return cost.map(amount -> Money.says(amount, catalogue().workshop().currency()))
                .orElse("stopped by a finding");
    }

    JsonOut json() {
        List<JsonOut> rows = new ArrayList<>();
        for (int i = 0; i < orders.size(); i++) {
            JsonOut.Members choices = JsonOut.object();
            orders.get(i).choices().values().forEach((option, value) -> choices.put(option.text(), value));
            rows.add(JsonOut.object()
                    .put("order", orders.get(i).name())
                    .putIfAny("cost", costs.get(i).orElse(null))
                    .put("choices", choices));
        }
        return JsonOut.object()
                .put("family", family.name())
                .put("valuesAtATime", ways.values)
                .put("complete", complete())
                .put("coverable", sample.coverable())
                .put("variants", JsonOut.list(rows))
                .put("cost", total())
                .put("uncoverable", JsonOut.list(sample.uncoverable(), JsonOut::texts));
    }
}
