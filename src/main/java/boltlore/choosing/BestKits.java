package boltlore.choosing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Part;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.faults.Outcome;
import boltlore.logic.All;
import boltlore.logic.Deadline;
import boltlore.logic.KitConditions;
import boltlore.logic.LeastOrders;
import boltlore.logic.LeastSum;
import boltlore.logic.PartConditions;
import boltlore.logic.ValidOrders;
import boltlore.measure.LineName;
import boltlore.order.Extra;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.resolution.Finding;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteRequest;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Finds the best complete kits that keep what has been chosen. Kits with a finding that stops their sheets are passed
 * over: all that the same finding stops at once. Not safe to share between threads.
 */
public final class BestKits {

    private final Resolver resolver;
    private final ValidOrders orders;
    private final Order draft;
    private final QuoteRequest asked;
    private final KitConditions kit;
    private final PartConditions parts;
    private final List<Condition> cases;
    private final KitSums sums;
    private final StoppedOrders stopped;
    private final Map<Aim, LeastSum> least = new EnumMap<>(Aim.class);
    private final Family family;

    /** Of kits that the workshop sells for itself in its own currency, without extras. */
    public BestKits(Resolver resolver, Family family, Deadline deadline) {
        this(
                resolver,
                Order.draft(Choices.of(family, Map.of())),
                new QuoteRequest(LocalDate.EPOCH, null, null),
                deadline);
    }

    /**
     * @param draft whose partner, terms, extras and brackets left out every kit is priced with
     * @param asked the day of the price, and what is agreed beside the order
     */
    public BestKits(Resolver resolver, Order draft, QuoteRequest asked, Deadline deadline) {
        this.resolver = resolver;
        this.draft = draft;
        this.asked = asked;
        this.family = draft.choices().family();
        this.orders = new ValidOrders(family, family.limits(), deadline);
        this.kit = new KitConditions(resolver.catalogue(), family, this::mayStayOut);
        this.parts = new PartConditions(kit);
        this.sums = new KitSums(kit, parts, family, deadline);
        this.stopped = new StoppedOrders(resolver.catalogue(), family, deadline);
        this.cases = extraCases(draft.extra(), resolver.catalogue(), family);
    }

    private boolean mayStayOut(LineName bracket) {
        return draft.leftOut() instanceof LeftOut.AllUnused
                || (draft.leftOut() instanceof LeftOut.These these
                        && these.lines().contains(bracket));
    }

    /**
     * The draft with other choices, which are complete; of the brackets that it names those stay out that carry nothing
     * with them.
     */
    public Order ordered(Choices choices) {
        Order order = draft.withChoices(choices);
        if (!(draft.leftOut() instanceof LeftOut.These these)) {
            return order;
        }
        SortedSet<LineName> unused = new TreeSet<>(these.lines());
        unused.removeIf(
                line -> !Conditions.holds(kit.called(line), choices) || Conditions.holds(kit.useful(line), choices));
        return order.withLeftOut(new LeftOut.These(unused));
    }

    /** The day that prices are of, and what is agreed beside the order. */
    public QuoteRequest asked() {
        return asked;
    }

    /** What a whole order comes to, looked at without any search; empty where something stops it. */
    public Optional<OrderPricing> pricing(Choices whole) {
        TrialKit kit = TrialKit.of(resolver, ordered(whole), asked);
        return kit.stops().isEmpty() ? Optional.of(kit.pricing()) : Optional.empty();
    }

    /** Brackets that support nothing in the kit of these choices; none where they are not a whole order. */
    public SortedSet<LineName> unused(Choices choices) {
        Outcome<Resolution> outcome = resolver.resolve(choices, new LeftOut.Undecided());
        return outcome instanceof Outcome.Sound<Resolution> sound && sound.value() instanceof Resolution.Resolved whole
                ? whole.kit().unused()
                : new TreeSet<>();
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

    /** Where the price of extras depends on a choice, each case is looked at for itself. */
    private Optional<BestKit> best(Aim aim, Choices keeping, boolean withTies) {
        boolean priced = aim == Aim.CHEAPEST || aim == Aim.DEAREST;
        Comparator<BestKit> byPrice = Comparator.comparing(
                        (BestKit found) -> found.price().orElse(BigDecimal.ZERO))
                .thenComparing(BestKit::sum);
        return (priced ? cases : List.of(Condition.ALWAYS))
                .stream()
                        .flatMap(within -> best(aim, keeping, within, withTies).stream())
                        .min(aim == Aim.DEAREST ? byPrice.reversed() : byPrice);
    }

    private Optional<BestKit> best(Aim aim, Choices keeping, Condition within, boolean withTies) {
        List<Condition> given = new ArrayList<>(Wanted.all(Chooser.list(keeping)));
        if (!within.isAlways()) {
            given.add(within);
        }
        List<Finding> passedOver = new ArrayList<>();
        Optional<Found> found = find(aim, given, withTies);
        while (found.isPresent()) {
            TrialKit kit = found.get().kit();
            if (kit.stops().isEmpty()) {
                return Optional.of(bestKit(aim, found.get(), kit.pricing(), passedOver));
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
            TrialKit kit = TrialKit.of(resolver, ordered(order), asked);
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
            TrialKit kit = TrialKit.of(resolver, ordered(order.get()), asked);
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

    private BestKit bestKit(Aim aim, Found found, OrderPricing pricing, List<Finding> passedOver) {
        BigDecimal sum = aim == Aim.DEAREST ? found.sum().negate() : found.sum();
        return new BestKit(
                aim,
                found.order(),
                pricing,
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
        for (Condition waiting : LeadChains.list(parts, family, draft.extra()).values()) {
            all.add(new Condition.Not(waiting));
            if (!orders.some(all)) {
                all.remove(all.size() - 1);
                return all;
            }
        }
        return all;
    }

    /** Conditions of which exactly one holds for every order. */
    private static List<Condition> extraCases(List<Extra> extras, Catalogue catalogue, Family family) {
        FinishCases finishes = new FinishCases(family);
        List<List<FinishCases.Case>> open = extras.stream()
                .filter(extra -> !extra.suppliedByCustomer() && extra.finish().isEmpty())
                .filter(extra -> extra.cost() == null && extra.price() == null)
                .flatMap(extra -> Stream.ofNullable(extra.part()))
                .flatMap(part -> whole(catalogue.part(part), catalogue))
                .map(finishes::of)
                .filter(cases -> cases.size() > 1)
                .distinct()
                .toList();
        List<Condition> all = List.of(Condition.ALWAYS);
        for (List<FinishCases.Case> cases : open) {
            all = all.stream()
                    .flatMap(before -> cases.stream().map(each -> All.of(before, each.when())))
                    .toList();
        }
        return all;
    }

    private static Stream<Part> whole(Part part, Catalogue catalogue) {
        return Stream.concat(
                Stream.of(part),
                part.contains().stream().flatMap(child -> whole(catalogue.part(child.part()), catalogue)));
    }
}
