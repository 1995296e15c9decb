package boltlore.trades.costing.path;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Joined;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.choices.FinishChosen;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import boltlore.resolution.Requirer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The steps of one kit and what each waits for. An assembly waits for all it contains; a coating for the part that it is
 * put on; the kit for all parts. A part that another needs is no part of it and need not be there when its asker is made:
 * it must be there when the asker is put into something, which is the kit, or the bolted assembly around it. A weld takes
 * no companions, so a welded assembly passes them on to what it goes into itself.
 */
final class KitNetwork {

    /** The steps from ordering or making a part to having it ready: one, or two where it is coated. */
    private record Steps(Step first, Step last) {
        Timing timing(LeadPath path) {
            return new Timing(
                    path.days() - path.slot(last).latestFinish(),
                    path.days() - path.slot(first).latestStart());
        }
    }

    /** A part that an extra asks for. */
    private record OfExtra(Part part, BigDecimal quantity, Steps steps) {}

    private final Bill bill;
    private final Catalogue catalogue;
    private final StepDays stepDays;
    private final Map<Step, List<Step>> after = new LinkedHashMap<>();
    private final IdentityHashMap<Item, Steps> steps = new IdentityHashMap<>();
    private final List<OfExtra> ofExtras = new ArrayList<>();
    private final Map<PartNumber, List<Step>> takers = new HashMap<>();
    private int places;

    private KitNetwork(Bill bill, Catalogue catalogue) {
        this.bill = bill;
        this.catalogue = catalogue;
        this.stepDays = new StepDays(catalogue);
    }

    static KitTimes times(Bill bill, Catalogue catalogue) {
        KitNetwork network = new KitNetwork(bill, catalogue);
        LeadPath path = LeadPath.of(network.activities());
        IdentityHashMap<Item, Timing> timings = new IdentityHashMap<>();
        network.steps.forEach((item, own) -> timings.put(item, own.timing(path)));
        List<TimedExtra> extras = network.ofExtras.stream()
                .map(each -> new TimedExtra(
                        each.part(), each.quantity(), each.steps().timing(path)))
                .toList();
        return new KitTimes(path, timings, extras);
    }

    private List<Activity<Step>> activities() {
        List<Item> items = bill.items();
        after.put(Step.kit(), new ArrayList<>());
        IdentityHashMap<Item, Step> ready = new IdentityHashMap<>();
        items.forEach(item -> ready.put(item, item(item)));
        items.forEach(item -> taken(item, null));
        for (Item item : items) {
            Step last = ready.getOrDefault(item, Step.kit());
            waitsFor(Step.kit(), last);
            receivers(item).forEach(receiver -> waitsFor(receiver, last));
        }
        extras();
        return after.entrySet().stream()
                .map(step -> new Activity<>(step.getKey(), days(step.getKey()), step.getValue()))
                .toList();
    }

    private void waitsFor(Step later, Step earlier) {
        after.computeIfAbsent(later, any -> new ArrayList<>()).add(earlier);
    }

    /** The step after which the item is ready; nothing inside what is bought takes a step. */
    private Step item(Item item) {
        Part part = item.part();
        boolean bought = part.source() == Source.BUY;
        Step own = own(part, bought);
        if (!bought) {
            item.inside().forEach(child -> waitsFor(own, item(child)));
        }
        Steps both = new Steps(own, coated(own, part, item.finish()));
        steps.put(item, both);
        return both.last();
    }

    private Step own(Part part, boolean bought) {
        Step own = new Step(++places, what(part, bought), part, "");
        after.put(own, new ArrayList<>());
        return own;
    }

    /** Extras are packed with the kit, so it waits for them too; what the customer supplies comes when it comes. */
    private void extras() {
        for (Extra extra : bill.order().extra()) {
            if (extra.part() != null && !extra.suppliedByCustomer()) {
                waitsFor(Step.kit(), extra(catalogue.part(extra.part()), extra.finish(), extra.quantity()));
            }
        }
    }

    private Step extra(Part part, String asked, BigDecimal quantity) {
        boolean bought = part.source() == Source.BUY;
        Step own = own(part, bought);
        if (!bought) {
            part.contains()
                    .forEach(child -> waitsFor(
                            own, extra(catalogue.part(child.part()), asked, quantity.multiply(child.quantity()))));
        }
        Steps both = new Steps(own, coated(own, part, asked.isEmpty() ? finish(part.coat()) : asked));
        ofExtras.add(new OfExtra(part, quantity, both));
        return both.last();
    }

    private String finish(@Nullable CoatingSpec coat) {
        if (coat == null || coat.role() == null) {
            return coat == null ? "" : String.valueOf(coat.finish());
        }
        FinishRule rule = bill.resolved().choices().family().finishes().get(coat.role());
        String chosen =
                rule == null ? null : FinishChosen.by(rule, bill.resolved().choices());
        return chosen == null ? "" : chosen;
    }

    private Step coated(Step own, Part part, String finish) {
        if (stepDays.turnRound(part, finish) == 0) {
            return own;
        }
        Step coating = new Step(++places, Step.What.COAT, part, finish);
        waitsFor(coating, own);
        return coating;
    }

    private static Step.What what(Part part, boolean bought) {
        if (bought) {
            return Step.What.BUY;
        }
        return part.isAssembly() ? Step.What.ASSEMBLE : Step.What.MAKE;
    }

    private int days(Step step) {
        Part part = step.part();
        if (part == null) {
            return stepDays.ofKit();
        }
        return step.what() == Step.What.COAT ? stepDays.turnRound(part, step.finish()) : part.leadDays();
    }

    /**
     * The bolted assemblies inside which an asker of a needed part goes; none where it goes into the kit itself. What
     * several share on one joint must be there for the first of them.
     */
    private List<Step> receivers(Item needed) {
        return askers(needed.origin()).stream()
                .flatMap(asker -> asker instanceof Requirer.OfPart ofPart
                        ? takers.getOrDefault(ofPart.part(), List.of()).stream()
                        : Stream.of())
                .toList();
    }

    private static List<Requirer> askers(Origin origin) {
        if (origin instanceof Origin.NeededBy by) {
            return List.of(by.asker());
        }
        return origin instanceof Origin.AtJoint at ? at.askers() : List.of();
    }

    /** Remembers what takes the item; nothing does where it goes into the kit itself. */
    private void taken(Item item, @Nullable Step taker) {
        if (taker != null) {
            takers.computeIfAbsent(item.part().number(), any -> new ArrayList<>())
                    .add(taker);
        }
        if (item.part().source() == Source.MAKE) {
            boolean takes = item.part().structure().joined() != Joined.WELDED;
            Steps own = takes ? steps.get(item) : null;
            Step inner = own == null ? taker : own.first();
            item.inside().forEach(child -> taken(child, inner));
        }
    }
}
