package boltlore.trades.scheduling;

import boltlore.catalogue.Capacity;
import boltlore.catalogue.Capacity.KitWorked;
import boltlore.catalogue.Capacity.WorkCentre;
import boltlore.catalogue.Operation;
import boltlore.catalogue.Part;
import boltlore.catalogue.PriceBook;
import boltlore.order.Order;
import boltlore.trades.KitInWork;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.CoatPlanner;
import boltlore.trades.coating.CureQueue;
import boltlore.trades.coating.OvenLoad;
import boltlore.trades.coating.Timetable;
import boltlore.trades.costing.Job;
import boltlore.trades.costing.cost.Element;
import boltlore.trades.costing.cost.FullCosting;
import boltlore.trades.costing.cost.KitTask;
import boltlore.trades.costing.path.Activity;
import boltlore.trades.costing.path.LeadPath;
import boltlore.trades.costing.path.Network;
import boltlore.trades.costing.path.Slot;
import boltlore.trades.costing.path.Step;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteOptions;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.scheduling.finite.Shop;
import boltlore.trades.scheduling.finite.ShopOrder;
import boltlore.trades.scheduling.finite.ShopOrder.Work;
import boltlore.trades.scheduling.finite.Windows;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The work of one order. Its steps with their days are those that set the lead time in the price; to them comes the work that
 * they take at the work centres. A part that stands in several places of the kit is made once, for the first of them; each
 * operation is rounded up to a whole minute. The pieces that the own oven takes are hung as they would be if the order were
 * coated alone, which takes no fewer minutes than its share of a common load; the wait for a round is among the days.
 *
 * @param steps beside those of the order, in the same places
 * @param unplaced work whose time is not known to pass, so that no date is promised
 */
record OrderWork(KitInWork kit, OrderPricing pricing, ShopOrder shopOrder, List<Done> steps, Set<Unplaced> unplaced) {

    /**
     * What is done in a step.
     *
     * @param load number of the oven load, or 0 where the step is none
     */
    record Done(Step.What what, @Nullable Part part, String finish, int load, List<String> operations) {

        private Key key() {
            return new Key(what, part == null ? "" : part.number().text(), finish, load);
        }
    }

    /**
     * An operation that no work centre with hours takes.
     *
     * @param centre that takes it, without hours; null where none does
     */
    record Unplaced(String operation, @Nullable WorkCentre centre) {}

    /** @param finish that is put on, or how many coats lie before a load */
    private record Key(Step.What what, String part, String finish, int load) {}

    static OrderWork of(KitInWork kit, LocalDate on, Shop shop, Capacity capacity) {
        OrderPricing pricing = QuoteOptions.pricing(kit, Given.NONE);
        return new Maker(kit, pricing, shop, capacity).make(on);
    }

    Order order() {
        return kit.order();
    }

    /** The day that the price's lead time gives: everything ordered and begun on the later of order and plan. */
    LocalDate priced(LocalDate on) {
        return begins(order(), on).plusDays(pricing.leadDays());
    }

    private static LocalDate begins(Order order, LocalDate on) {
        LocalDate placed = order.placed();
        return placed == null || placed.isBefore(on) ? on : placed;
    }

    /** Makes the work of one order. */
    private static final class Maker {

        private final KitInWork kit;
        private final OrderPricing pricing;
        private final Shop shop;
        private final Capacity capacity;
        private final Map<Key, Done> done = new LinkedHashMap<>();
        private final Map<Key, Integer> days = new HashMap<>();
        private final Map<Key, Set<Key>> after = new LinkedHashMap<>();
        private final Map<Key, List<Work>> work = new HashMap<>();
        private final Set<Unplaced> unplaced = new LinkedHashSet<>();

        Maker(KitInWork kit, OrderPricing pricing, Shop shop, Capacity capacity) {
            this.kit = kit;
            this.pricing = pricing;
            this.shop = shop;
            this.capacity = capacity;
        }

        OrderWork make(LocalDate on) {
            steps(pricing.path());
            loads();
            List<Key> inTurn = List.copyOf(new Network<>(activities()).schedule().keySet());
            Map<Key, Integer> places = new HashMap<>();
            inTurn.forEach(key -> places.put(key, places.size()));
            int begun = shop.day(begins(kit.order(), on));
            int ordered = kit.order().placed() == null ? begun : shop.day(kit.order().placed());
            List<ShopOrder.Step> steps = inTurn.stream()
                    .map(key -> new ShopOrder.Step(
                            key.what() == Step.What.BUY ? ordered : begun,
                            days.getOrDefault(key, 0),
                            work.getOrDefault(key, List.of()),
                            after.getOrDefault(key, Set.of()).stream()
                                    .map(places::get)
                                    .sorted()
                                    .toList()))
                    .toList();
            LocalDate due = kit.order().due();
            ShopOrder dated = new ShopOrder(
                    kit.order().name(), due == null ? begun : shop.day(due), due != null, steps);
            ShopOrder ranked =
                    due == null ? dated.due(Windows.of(dated, shop).earliest(), false) : dated;
            return new OrderWork(
                    kit,
                    pricing,
                    ranked,
                    inTurn.stream().flatMap(key -> Stream.ofNullable(done.get(key))).toList(),
                    unplaced);
        }

        private List<Activity<Key>> activities() {
            return after.entrySet().stream()
                    .map(step -> new Activity<>(
                            step.getKey(), days.getOrDefault(step.getKey(), 0), List.copyOf(step.getValue())))
                    .toList();
        }

        /** Those of the lead time; a part at several places is one step. */
        private void steps(LeadPath path) {
            Map<String, List<Job>> jobs = Job.of(pricing.costed()).stream()
                    .collect(Collectors.groupingBy(job -> job.part().number().text()));
            for (Slot<Step> slot : path.slots().values()) {
                Step step = slot.activity().what();
                Key key = key(step);
                if (after.putIfAbsent(key, new LinkedHashSet<>()) == null) {
                    days.put(key, slot.activity().days());
                    List<String> operations = new ArrayList<>();
                    work.put(key, worked(step, jobs, operations));
                    done.put(key, new Done(step.what(), step.part(), step.finish(), 0, List.copyOf(operations)));
                }
                slot.activity().after().forEach(before -> after.computeIfAbsent(key, any -> new LinkedHashSet<>())
                        .add(key(before)));
            }
        }

        private static Key key(Step step) {
            return new Done(step.what(), step.part(), step.finish(), 0, List.of()).key();
        }

        private List<Work> worked(Step step, Map<String, List<Job>> jobs, List<String> operations) {
            Part part = step.part();
            if (part == null) {
                return kitWork(operations);
            }
            List<Work> all = new ArrayList<>();
            if (step.what() == Step.What.MAKE || step.what() == Step.What.ASSEMBLE) {
                List<Job> own = jobs.getOrDefault(part.number().text(), List.of());
                for (Operation operation : part.making().operations()) {
                    BigDecimal minutes = own.stream()
                            .map(job -> job.minutes(operation))
                            .reduce(BigDecimal.ZERO, BigDecimal::add);
                    if (!isOutside(operation.operation())) {
                        place(operation.operation(), capacity.of(operation.operation()), minutes, all, operations);
                    }
                }
            }
            return all;
        }

        /** What another firm does takes the days of its step and none of our hours. */
        private boolean isOutside(String operation) {
            PriceBook prices = kit.catalogue().prices();
            return prices != null && prices.labour().of(operation).outside();
        }

        private void place(
                String operation,
                Optional<WorkCentre> by,
                BigDecimal minutes,
                List<Work> all,
                List<String> operations) {
            long whole = minutes.setScale(0, RoundingMode.CEILING).longValueExact();
            if (whole == 0) {
                return;
            }
            int centre = by.map(of -> shop.centres().stream()
                            .map(Shop.Centre::name)
                            .toList()
                            .indexOf(of.name()))
                    .orElse(-1);
            if (centre < 0) {
                unplaced.add(new Unplaced(operation, by.orElse(null)));
            } else {
                all.add(new Work(centre, whole));
                operations.add(operation);
            }
        }

        /** As the price counts it: assembly, test, packing. */
        private List<Work> kitWork(List<String> operations) {
            PriceBook prices = kit.catalogue().prices();
            Map<String, BigDecimal> minutes = new TreeMap<>();
            if (prices != null) {
                for (KitTask task : FullCosting.cost(pricing.costed(), prices).tasks()) {
                    minutes.merge(
                            task.work().rate().operation(),
                            task.work().setUpMin().add(task.work().runMin()),
                            BigDecimal::add);
                }
            }
            List<Work> all = new ArrayList<>();
            Map<Element, KitWorked> inTurn = new LinkedHashMap<>();
            inTurn.put(Element.KIT_ASSEMBLY, KitWorked.ASSEMBLES);
            inTurn.put(Element.KIT_TEST, KitWorked.TESTS);
            inTurn.put(Element.KIT_PACKING, KitWorked.PACKS);
            inTurn.forEach((element, worked) -> place(
                    element.says(),
                    capacity.of(worked),
                    minutes.getOrDefault(element.says(), BigDecimal.ZERO),
                    all,
                    operations));
            return all;
        }

        /** A load is cured when the last of its pieces is there; what needs one of them waits for the load. */
        private void loads() {
            CoatPlan plan = CoatPlanner.plan(List.of(kit.bill()), kit.catalogue());
            Map<Integer, Integer> minutes = Timetable.minutes(plan);
            Map<Key, List<Key>> bringing = new LinkedHashMap<>();
            plan.runs().stream()
                    .flatMap(run -> run.queues().stream())
                    .map(CureQueue::loads)
                    .flatMap(List::stream)
                    .forEach(load -> load(load, minutes.getOrDefault(load.number(), 0), bringing));
            after.forEach((key, before) -> {
                if (key.load() == 0) {
                    List.copyOf(before).stream()
                            .flatMap(needed -> bringing.getOrDefault(needed, List.of()).stream())
                            .forEach(before::add);
                }
            });
        }

        /** Pieces into which coated ones go come later, so they take the load a second time: that is the safe side. */
        private void load(OvenLoad load, int minutes, Map<Key, List<Key>> bringing) {
            Map<Integer, Set<Key>> byCoatsBefore = new TreeMap<>();
            Set<Key> pieces = new LinkedHashSet<>();
            load.rows().forEach(row -> coated(row.part(), row.finish().name()).ifPresent(pieces::add));
            if (pieces.isEmpty()) {
                byCoatsBefore.put(0, new LinkedHashSet<>());
            }
            Map<Key, Integer> known = new HashMap<>();
            pieces.forEach(piece -> byCoatsBefore
                    .computeIfAbsent(coatsBefore(piece, known), none -> new LinkedHashSet<>())
                    .add(piece));
            byCoatsBefore.forEach((coats, together) -> {
                Key key = new Key(Step.What.COAT, "", String.valueOf(coats), load.number());
                Set<Key> before = new LinkedHashSet<>();
                List<String> operations = new ArrayList<>();
                List<Work> all = new ArrayList<>();
                place("oven load", capacity.of(KitWorked.COATS), BigDecimal.valueOf(minutes), all, operations);
                for (Key piece : together) {
                    before.addAll(piece.what() == Step.What.COAT ? after.getOrDefault(piece, Set.of()) : Set.of(piece));
                    before.addAll(bringing.getOrDefault(piece, List.of()));
                    bringing.computeIfAbsent(piece, none -> new ArrayList<>()).add(key);
                }
                after.put(key, before);
                work.put(key, all);
                done.put(key, new Done(Step.What.COAT, null, "", load.number(), operations));
            });
        }

        /** The step after which the part lies ready coated, but for its load. */
        private Optional<Key> coated(Part part, String finish) {
            String number = part.number().text();
            return Stream.of(
                            new Key(Step.What.COAT, number, finish, 0),
                            new Key(Step.What.MAKE, number, "", 0),
                            new Key(Step.What.ASSEMBLE, number, "", 0),
                            new Key(Step.What.BUY, number, "", 0))
                    .filter(after::containsKey)
                    .findFirst();
        }

        private int coatsBefore(Key piece, Map<Key, Integer> known) {
            Integer found = known.get(piece);
            if (found != null) {
                return found;
            }
            int coats = 0;
            for (Key before : after.getOrDefault(piece, Set.of())) {
                if (before.load() == 0) {
                    coats = Math.max(
                            coats, coatsBefore(before, known) + (before.what() == Step.What.COAT ? 1 : 0));
                }
            }
            known.put(piece, coats);
            return coats;
        }
    }
}
