package boltlore.trades.costing.path;

import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.catalogue.Joined;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import boltlore.resolution.Requirer;
import boltlore.trades.costing.LeadTimes;
import boltlore.trades.costing.PricedBill;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The steps of one kit and what each waits for. An assembly waits for all it contains; a coating for the part that it is
 * put on; the kit for all parts. A part that another needs is no part of it and need not be there when its asker is made:
 * it must be there when the asker is put into something, which is the kit, or the bolted assembly around it. A weld takes
 * no companions, so a welded assembly passes them on to what it goes into itself.
 */
final class KitNetwork {

    private final PricedBill priced;
    private final LeadTimes leadTimes;
    private final Map<Step, List<Step>> after = new LinkedHashMap<>();
    private final IdentityHashMap<Item, Step> firstOf = new IdentityHashMap<>();
    private final Map<PartNumber, List<Step>> takers = new HashMap<>();
    private int places;

    private KitNetwork(PricedBill priced) {
        this.priced = priced;
        this.leadTimes = new LeadTimes(priced.catalogue());
    }

    static List<Activity<Step>> of(PricedBill priced) {
        return new KitNetwork(priced).activities();
    }

    private List<Activity<Step>> activities() {
        List<Item> items = priced.bill().items();
        after.put(Step.kit(), new ArrayList<>());
        IdentityHashMap<Item, Step> ready = new IdentityHashMap<>();
        items.forEach(item -> ready.put(item, item(item)));
        items.forEach(item -> taken(item, null));
        for (Item item : items) {
            Step last = ready.getOrDefault(item, Step.kit());
            waitsFor(Step.kit(), last);
            receivers(item).forEach(receiver -> waitsFor(receiver, last));
        }
        extras().forEach(last -> waitsFor(Step.kit(), last));
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
        Step own = new Step(++places, what(part, bought), part, "");
        firstOf.put(item, own);
        after.put(own, new ArrayList<>());
        if (!bought) {
            item.inside().forEach(child -> waitsFor(own, item(child)));
        }
        return leadTimes.turnRoundDays(part, item.finish()) == 0 ? own : coated(own, part, item.finish());
    }

    /** Extras are packed with the kit, so it waits for them too; what the customer supplies comes when it comes. */
    private List<Step> extras() {
        List<Step> last = new ArrayList<>();
        for (Extra extra : priced.bill().order().extra()) {
            if (extra.part() != null && !extra.suppliedByCustomer()) {
                last.add(extra(priced.catalogue().part(extra.part()), extra.finish()));
            }
        }
        return last;
    }

    private Step extra(Part part, String finish) {
        boolean bought = part.source() == Source.BUY;
        Step own = new Step(++places, what(part, bought), part, "");
        after.put(own, new ArrayList<>());
        if (!bought) {
            part.contains()
                    .forEach(child -> waitsFor(own, extra(priced.catalogue().part(child.part()), finish)));
        }
        return leadTimes.turnRoundDays(part, finish) == 0 ? own : coated(own, part, finish);
    }

    private Step coated(Step own, Part part, String finish) {
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
            return priced.catalogue().workshop().assemblyDays();
        }
        return step.what() == Step.What.COAT ? leadTimes.turnRoundDays(part, step.finish()) : part.leadDays();
    }

    /** The bolted assemblies inside which the asker of a needed part goes; none where it goes into the kit itself. */
    private List<Step> receivers(Item needed) {
        Requirer asker = asker(needed.origin());
        return asker instanceof Requirer.OfPart ofPart ? takers.getOrDefault(ofPart.part(), List.of()) : List.of();
    }

    private static @Nullable Requirer asker(Origin origin) {
        if (origin instanceof Origin.NeededBy by) {
            return by.asker();
        }
        return origin instanceof Origin.AtJoint at ? at.asker() : null;
    }

    /** Remembers what takes the item; nothing does where it goes into the kit itself. */
    private void taken(Item item, @Nullable Step taker) {
        if (taker != null) {
            takers.computeIfAbsent(item.part().number(), any -> new ArrayList<>())
                    .add(taker);
        }
        if (item.part().source() == Source.MAKE) {
            boolean takes = item.part().structure().joined() != Joined.WELDED;
            Step inner = takes ? firstOf.get(item) : taker;
            item.inside().forEach(child -> taken(child, inner));
        }
    }
}
