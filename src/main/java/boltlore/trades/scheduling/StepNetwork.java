package boltlore.trades.scheduling;

import boltlore.catalogue.Capacity;
import boltlore.catalogue.Capacity.KitWorked;
import boltlore.catalogue.Capacity.WorkCentre;
import boltlore.catalogue.Operation;
import boltlore.catalogue.Part;
import boltlore.catalogue.PriceBook;
import boltlore.trades.KitInWork;
import boltlore.trades.costing.Job;
import boltlore.trades.costing.cost.Element;
import boltlore.trades.costing.cost.FullCost;
import boltlore.trades.costing.cost.FullCosting;
import boltlore.trades.costing.cost.KitTask;
import boltlore.trades.costing.path.Activity;
import boltlore.trades.costing.path.LeadPath;
import boltlore.trades.costing.path.Network;
import boltlore.trades.costing.path.Slot;
import boltlore.trades.costing.path.Step;
import boltlore.trades.costing.quote.Calculation;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.scheduling.OrderWork.Done;
import boltlore.trades.scheduling.OrderWork.Unplaced;
import boltlore.trades.scheduling.finite.Shop;
import boltlore.trades.scheduling.finite.ShopOrder;
import boltlore.trades.scheduling.finite.ShopOrder.Work;
import java.math.BigDecimal;
import java.math.RoundingMode;
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

/** The steps of one order while they are put together: those of its lead time, a part at several places being one step. */
final class StepNetwork {

    /**
     * What makes a step the same.
     *
     * @param finish that is put on; of a powder run how many coats its pieces have before
     * @param run number of the powder run, else 0
     */
    record StepKey(Step.What what, String part, String finish, int run) {
        static StepKey of(Step step) {
            Part part = step.part();
            return new StepKey(step.what(), part == null ? "" : part.number().text(), step.finish(), 0);
        }
    }

    /** Work as it is collected, with its operations beside it. */
    private record Placed(List<Work> work, List<String> operations) {
        Placed() {
            this(new ArrayList<>(), new ArrayList<>());
        }
    }

    private final KitInWork kit;
    private final OrderPricing pricing;
    private final Shop shop;
    private final Capacity capacity;
    private final Map<StepKey, Done> done = new LinkedHashMap<>();
    private final Map<StepKey, Integer> days = new HashMap<>();
    private final Map<StepKey, Set<StepKey>> after = new LinkedHashMap<>();
    private final Map<StepKey, List<Work>> work = new HashMap<>();
    private final Set<Unplaced> unplaced = new LinkedHashSet<>();

    StepNetwork(KitInWork kit, OrderPricing pricing, Shop shop, Capacity capacity) {
        this.kit = kit;
        this.pricing = pricing;
        this.shop = shop;
        this.capacity = capacity;
    }

    void add(LeadPath path) {
        Map<String, List<Job>> jobs = Job.of(pricing.costed()).stream()
                .collect(Collectors.groupingBy(job -> job.part().number().text()));
        for (Slot<Step> slot : path.slots().values()) {
            Step step = slot.activity().what();
            StepKey key = StepKey.of(step);
            if (after.putIfAbsent(key, new LinkedHashSet<>()) == null) {
                Placed placed = step.part() == null ? ofKit() : ofPart(step, step.part(), jobs);
                put(key, new Done(step.what(), step.part(), step.finish(), 0, placed.operations()), placed.work());
                days.put(key, slot.activity().days());
            }
            slot.activity().after().forEach(before -> after(key).add(StepKey.of(before)));
        }
    }

    private void put(StepKey key, Done what, List<Work> itsWork) {
        done.put(key, what);
        work.put(key, List.copyOf(itsWork));
    }

    /** What the step waits for, to be added to; nothing yet where it is new. */
    Set<StepKey> after(StepKey key) {
        return after.computeIfAbsent(key, none -> new LinkedHashSet<>());
    }

    boolean has(StepKey key) {
        return after.containsKey(key);
    }

    List<StepKey> keys() {
        return List.copyOf(after.keySet());
    }

    /** A powder run in the own oven, which takes no days of its own. */
    void addRun(StepKey key, Set<StepKey> before, int minutes) {
        Placed placed = new Placed();
        place("powder run", capacity.of(KitWorked.COATS), BigDecimal.valueOf(minutes), placed);
        after(key).addAll(before);
        put(key, new Done(Step.What.COAT, null, "", key.run(), placed.operations()), placed.work());
    }

    private Placed ofPart(Step step, Part part, Map<String, List<Job>> jobs) {
        Placed placed = new Placed();
        if (step.what() == Step.What.MAKE || step.what() == Step.What.ASSEMBLE) {
            List<Job> own = jobs.getOrDefault(part.number().text(), List.of());
            for (Operation operation : part.making().operations()) {
                if (!isOutside(operation.operation())) {
                    BigDecimal minutes =
                            own.stream().map(job -> job.minutes(operation)).reduce(BigDecimal.ZERO, BigDecimal::add);
                    place(operation.operation(), capacity.of(operation.operation()), minutes, placed);
                }
            }
        }
        return placed;
    }

    /** What another firm does takes the days of its step and none of our hours. */
    private boolean isOutside(String operation) {
        PriceBook prices = kit.catalogue().prices();
        return prices != null && prices.labour().of(operation).outside();
    }

    /** Assembly, test and packing, with the minutes that the price counts. */
    private Placed ofKit() {
        Map<String, BigDecimal> minutes = new TreeMap<>();
        for (KitTask task : tasks()) {
            BigDecimal own = task.work().setUpMin().add(task.work().runMin());
            minutes.merge(task.work().rate().operation(), own, BigDecimal::add);
        }
        Map<Element, KitWorked> inTurn = new LinkedHashMap<>();
        inTurn.put(Element.KIT_ASSEMBLY, KitWorked.ASSEMBLES);
        inTurn.put(Element.KIT_TEST, KitWorked.TESTS);
        inTurn.put(Element.KIT_PACKING, KitWorked.PACKS);
        Placed placed = new Placed();
        inTurn.forEach((element, worked) -> place(
                element.says(), capacity.of(worked), minutes.getOrDefault(element.says(), BigDecimal.ZERO), placed));
        return placed;
    }

    /** Those of the price; where it has none for want of an exchange rate, those of its cost all the same. */
    private List<KitTask> tasks() {
        PriceBook prices = kit.catalogue().prices();
        return pricing.found()
                .map(Calculation::cost)
                .or(() -> Optional.ofNullable(prices).map(book -> FullCosting.cost(pricing.costed(), book)))
                .map(FullCost::tasks)
                .orElse(List.of());
    }

    private void place(String operation, Optional<WorkCentre> by, BigDecimal minutes, Placed placed) {
        long whole = minutes.setScale(0, RoundingMode.CEILING).longValueExact();
        int centre = by.map(of ->
                        shop.centres().stream().map(Shop.Centre::name).toList().indexOf(of.name()))
                .orElse(-1);
        if (whole > 0 && centre < 0) {
            unplaced.add(new Unplaced(operation, by.orElse(null)));
        } else if (whole > 0) {
            placed.work().add(new Work(centre, whole));
            placed.operations().add(operation);
        }
    }

    /** Each after those that it waits for. */
    private List<StepKey> inTurn() {
        List<Activity<StepKey>> activities = after.entrySet().stream()
                .map(step -> new Activity<>(
                        step.getKey(), days.getOrDefault(step.getKey(), 0), List.copyOf(step.getValue())))
                .toList();
        return List.copyOf(new Network<>(activities).schedule().keySet());
    }

    /**
     * All steps, for the shop.
     *
     * @param ordered day on which what is bought is ordered
     * @param begun day on whose evening work in the house may begin
     */
    List<ShopOrder.Step> steps(int ordered, int begun) {
        Map<StepKey, Integer> places = new HashMap<>();
        List<StepKey> inTurn = inTurn();
        inTurn.forEach(key -> places.put(key, places.size()));
        return inTurn.stream()
                .map(key -> new ShopOrder.Step(
                        key.what() == Step.What.BUY ? ordered : begun,
                        days.getOrDefault(key, 0),
                        work.getOrDefault(key, List.of()),
                        after(key).stream()
                                .flatMap(before -> Stream.ofNullable(places.get(before)))
                                .sorted()
                                .toList()))
                .toList();
    }

    /** In the same places as the steps. */
    List<Done> done() {
        return inTurn().stream()
                .flatMap(key -> Stream.ofNullable(done.get(key)))
                .toList();
    }

    Set<Unplaced> unplaced() {
        return unplaced;
    }
}
