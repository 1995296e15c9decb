package boltlore.choosing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Family;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.logic.PartConditions;
import boltlore.trades.costing.LeadTimes;
import boltlore.trades.costing.Timing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The chains of lead times that an order may have to wait for, longest first. */
final class LeadChains {

    private final Catalogue catalogue;
    private final PartConditions parts;
    private final LeadTimes leadTimes;
    private final FinishCases finishes;
    private final SortedMap<Integer, List<Condition>> chains = new TreeMap<>(Comparator.reverseOrder());

    private LeadChains(PartConditions parts, Family family) {
        this.catalogue = parts.catalogue();
        this.parts = parts;
        this.leadTimes = new LeadTimes(catalogue);
        this.finishes = new FinishCases(family);
    }

    /** By calendar days, the orders that have to wait that long for some part; longest first. */
    static SortedMap<Integer, Condition> of(PartConditions parts, Family family) {
        LeadChains chains = new LeadChains(parts, family);
        chains.parts.reachable().stream().map(chains.catalogue::part).forEach(chains::kitPart);
        SortedMap<Integer, Condition> byDays = new TreeMap<>(Comparator.reverseOrder());
        chains.chains.forEach((days, some) -> byDays.put(days, Any.of(some)));
        return byDays;
    }

    private void kitPart(Part part) {
        Condition brought = parts.brought(part.number());
        if (!brought.equals(Any.NEVER)) {
            for (FinishCases.Case each : finishes.of(part)) {
                chain(part, All.of(brought, each.when()), leadTimes.ofKitPart(part, each.finish()));
            }
        }
    }

    private void chain(Part part, Condition when, Timing timing) {
        chains.computeIfAbsent(timing.startDays(), days -> new ArrayList<>()).add(when);
        if (part.source() == Source.BUY) {
            return;
        }
        for (Contained child : part.contains()) {
            Part childPart = catalogue.part(child.part());
            for (FinishCases.Case each : finishes.of(childPart)) {
                chain(childPart, All.of(when, each.when()), leadTimes.ofChild(childPart, each.finish(), timing));
            }
        }
    }
}
