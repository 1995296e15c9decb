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
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Finds the best complete kits that keep what has been chosen. Kits with a finding that stops their sheets are passed
 * over: all that the same finding stops at once. Not safe to share between threads.
 */
public final class BestKits {

    private final Resolver resolver;
    private final ValidOrders orders;
    private final PartConditions parts;
    private final KitSums sums;
    private final StoppedOrders stopped;
    private final Map<Aim, LeastSum> least = new EnumMap<>(Aim.class);
    private final Family family;

    public BestKits(Resolver resolver, Family family, Deadline deadline) {
        Catalogue catalogue = resolver.catalogue();
        this.resolver = resolver;
        this.family = family;
        this.orders = new ValidOrders(family, family.limits(), deadline);
        this.parts = new PartConditions(new KitConditions(catalogue, family, false));
        this.sums = new KitSums(parts, family);
        this.stopped = new StoppedOrders(catalogue, family, deadline);
    }

    /**
     * One of the best orders.
     *
     * @param ties the values that all of them together have which nothing stops; none where it is stopped itself
     */
    private record Found(Choices order, TrialKit kit, BigDecimal sum, Set<Choice> ties) {}

    /**
     * The best kit by that aim, with what is as good; empty where each order that keeps the choices has a finding that
     * stops it, or there is none.
     *
     * @throws Deadline.Passed where neither is known, because the time was up or not all kits could be looked at
     */
    public Optional<BestKit> best(Aim aim, Choices keeping) {
        return best(aim, keeping, true);
    }

    /** The same without a word on what is as good, which can take longer than all the rest. */
    public Optional<BestKit> bestAlone(Aim aim, Choices keeping) {
        return best(aim, keeping, false);
    }

    private Optional<BestKit> best(Aim aim, Choices keeping, boolean withTies) {
        List<Condition> given = new ArrayList<>(Wanted.all(Chooser.list(keeping)));
        List<Finding> passedOver = new ArrayList<>();
        Optional<Found> found = find(aim, given, withTies);
        while (found.isPresent()) {
            TrialKit kit = found.get().kit();
            if (kit.stops().isEmpty()) {
                return Optional.of(bestKit(aim, found.get(), kit.bill(), passedOver));
            }
            passedOver.add(kit.stops().get(0));
            given.addAll(passedBy(found.get().order(), kit));
            found = find(aim, given, withTies);
        }
        return Optional.empty();
    }

    private Optional<Found> find(Aim aim, List<Condition> given, boolean withTies) {
        List<Condition> narrowed = aim == Aim.SOONEST ? soonest(given) : given;
        return sum(aim).among(narrowed, best -> {
            Choices order = EqualOrders.preferred(family, best);
            TrialKit kit = TrialKit.of(resolver, order);
            boolean ties = withTies && kit.stops().isEmpty();
            return new Found(order, kit, best.sum(), ties ? ties(best, order) : Set.of());
        });
    }

    /** The values of best orders that nothing stops: each shown by one. */
    private Set<Choice> ties(LeastOrders best, Choices order) {
        Set<Choice> shown = new HashSet<>(Chooser.list(order));
        List<Condition> sound = new ArrayList<>();
        for (Choice value : best.values()) {
            if (!shown.contains(value)) {
                sound.add(Wanted.of(value));
                sound(sound, asked -> best.one(asked, List.of())).ifPresent(other -> shown.addAll(Chooser.list(other)));
                sound.remove(Wanted.of(value));
            }
        }
        return shown;
    }

    /** Whether some kit that keeps the choices has no finding that stops it. */
    boolean some(Choices keeping) {
        List<Condition> given = new ArrayList<>(Wanted.all(Chooser.list(keeping)));
        given.addAll(goingOn());
        return sound(given, orders::witness).isPresent();
    }

    /**
     * An order that nothing stops.
     *
     * @param given to which is added what keeps out of stops
     */
    private Optional<Choices> sound(List<Condition> given, Function<List<Condition>, Optional<Choices>> find) {
        Optional<Choices> order = find.apply(given);
        while (order.isPresent()) {
            TrialKit kit = TrialKit.of(resolver, order.get());
            if (kit.stops().isEmpty()) {
                return order;
            }
            given.addAll(passedBy(order.get(), kit));
            order = find.apply(given);
        }
        return order;
    }

    /** What all orders fulfil that are not stopped as this one is. */
    private List<Condition> passedBy(Choices order, TrialKit stoppedKit) {
        return stoppedKit.stops().stream()
                .<Condition>map(finding -> new Condition.Not(stopped.with(order, finding)))
                .toList();
    }

    /** What all orders fulfil that are not stopped by what was met so far. */
    List<Condition> goingOn() {
        return stopped.met().stream().<Condition>map(Condition.Not::new).toList();
    }

    private BestKit bestKit(Aim aim, Found found, PricedBill bill, List<Finding> passedOver) {
        BigDecimal sum = aim == Aim.DEAREST ? found.sum().negate() : found.sum();
        return new BestKit(
                aim,
                found.order(),
                bill,
                sum,
                sum(aim).grain(),
                EqualOrders.others(found.order(), found.ties()),
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
