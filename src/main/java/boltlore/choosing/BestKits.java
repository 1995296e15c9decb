package boltlore.choosing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.logic.Deadline;
import boltlore.logic.KitConditions;
import boltlore.logic.LeastOrders;
import boltlore.logic.LeastSum;
import boltlore.logic.PartConditions;
import boltlore.logic.ValidOrders;
import boltlore.resolution.Finding;
import boltlore.resolution.Resolver;
import boltlore.trades.costing.PricedBill;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Finds the best complete kits that keep what has been chosen. Kits with a finding that stops their sheets are passed
 * over. Not safe to share between threads.
 */
public final class BestKits {

    /** So many kits with stops are passed over before the search is given up. */
    private static final int MOST_PASSED_OVER = 500;

    private final Resolver resolver;
    private final ValidOrders orders;
    private final PartConditions parts;
    private final KitSums sums;
    private final Map<Aim, LeastSum> least = new EnumMap<>(Aim.class);
    private final Family family;

    public BestKits(Resolver resolver, Family family, Deadline deadline) {
        Catalogue catalogue = resolver.catalogue();
        this.resolver = resolver;
        this.family = family;
        this.orders = new ValidOrders(family, family.limits(), deadline);
        this.parts = new PartConditions(new KitConditions(catalogue, family, false));
        this.sums = new KitSums(parts, family);
    }

    /** One of the best orders, and the values that all of them together have. */
    private record Found(Choices order, BigDecimal sum, Set<Choice> values) {}

    /**
     * The best kit by that aim, with what is as good; empty where no order keeps the choices without a finding that stops
     * it.
     */
    public Optional<BestKit> best(Aim aim, Choices keeping) {
        return best(aim, keeping, LeastOrders::values);
    }

    /** The same without a word on what is as good, which can take longer than all the rest. */
    public Optional<BestKit> bestAlone(Aim aim, Choices keeping) {
        return best(aim, keeping, best -> Set.of());
    }

    private Optional<BestKit> best(Aim aim, Choices keeping, Function<LeastOrders, Set<Choice>> ties) {
        List<Condition> given = new ArrayList<>(Wanted.all(Chooser.list(keeping)));
        List<Finding> passedOver = new ArrayList<>();
        Optional<Found> found = find(aim, given, ties);
        while (found.isPresent() && passedOver.size() < MOST_PASSED_OVER) {
            Choices order = found.get().order();
            TrialKit kit = TrialKit.of(resolver, order);
            if (kit.stops().isEmpty()) {
                return Optional.of(bestKit(aim, found.get(), kit.bill(), passedOver));
            }
            passedOver.add(kit.stops().get(0));
            given.add(new Condition.Not(StoppedOrders.of(order, kit.stops().get(0))));
            found = find(aim, given, ties);
        }
        return Optional.empty();
    }

    private Optional<Found> find(Aim aim, List<Condition> given, Function<LeastOrders, Set<Choice>> ties) {
        List<Condition> narrowed = aim == Aim.SOONEST ? soonest(given) : given;
        return sum(aim).among(
                        narrowed, best -> new Found(EqualOrders.preferred(family, best), best.sum(), ties.apply(best)));
    }

    private BestKit bestKit(Aim aim, Found found, PricedBill bill, List<Finding> passedOver) {
        BigDecimal sum = aim == Aim.DEAREST ? found.sum().negate() : found.sum();
        return new BestKit(
                aim,
                found.order(),
                bill,
                sum,
                sum(aim).grain(),
                EqualOrders.others(found.order(), found.values()),
                List.copyOf(passedOver));
    }

    private LeastSum sum(Aim aim) {
        return switch (aim) {
            case CHEAPEST, SOONEST -> least.computeIfAbsent(Aim.CHEAPEST, same -> new LeastSum(orders, sums.cost()));
            case DEAREST -> least.computeIfAbsent(aim, same -> LeastSum.ofNegative(orders, sums.cost()));
            case LIGHTEST -> least.computeIfAbsent(aim, same -> new LeastSum(orders, sums.massKg()));
        };
    }

    /** What is given, and that no chain of lead times is longer than it has to be. */
    private List<Condition> soonest(List<Condition> given) {
        List<Condition> all = new ArrayList<>(given);
        for (Condition waiting : LeadChains.of(parts, family).values()) {
            all.add(new Condition.Not(waiting));
            if (!orders.some(all)) {
                all.remove(all.size() - 1);
                return all;
            }
        }
        return all;
    }
}
