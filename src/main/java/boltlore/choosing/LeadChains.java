package boltlore.choosing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Family;
import boltlore.catalogue.Joined;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.logic.PartConditions;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import boltlore.trades.costing.path.StepDays;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The chains of steps that an order may have to wait for, longest first: the paths of all networks of steps that the orders
 * of a family have. An order takes as many days as the longest chain whose condition it fulfils.
 */
final class LeadChains {

    private final Catalogue catalogue;
    private final PartConditions parts;
    private final StepDays stepDays;
    private final FinishCases finishes;
    private final SortedMap<Integer, List<Condition>> chains = new TreeMap<>(Comparator.reverseOrder());

    private LeadChains(PartConditions parts, Family family) {
        this.catalogue = parts.catalogue();
        this.parts = parts;
        this.stepDays = new StepDays(catalogue);
        this.finishes = new FinishCases(family);
    }

    /** By calendar days, the orders that have to wait that long for something; longest first. */
    static SortedMap<Integer, Condition> list(PartConditions parts, Family family, List<Extra> extras) {
        LeadChains chains = new LeadChains(parts, family);
        chains.kit();
        extras.forEach(chains::extra);
        SortedMap<Integer, Condition> byDays = new TreeMap<>(Comparator.reverseOrder());
        chains.chains.forEach((days, some) -> byDays.put(days, Any.of(some)));
        return byDays;
    }

    private void kit() {
        for (PartNumber number : parts.reachable()) {
            Condition brought = parts.brought(number);
            if (!brought.equals(Any.NEVER)) {
                part(catalogue.part(number), brought, stepDays.ofKit());
            }
        }
    }

    private void extra(Extra extra) {
        if (extra.part() != null && !extra.suppliedByCustomer()) {
            extra(catalogue.part(extra.part()), extra.finish(), Condition.ALWAYS, stepDays.ofKit());
        }
    }

    private void extra(Part part, String asked, Condition when, int readyDays) {
        for (FinishCases.Case each : asked.isEmpty() ? finishes.of(part) : List.of(FinishCases.always(asked))) {
            Condition both = All.of(when, each.when());
            int start = start(part, each.finish(), both, readyDays);
            if (part.source() == Source.MAKE) {
                part.contains().forEach(child -> extra(catalogue.part(child.part()), asked, both, start));
            }
        }
    }

    private void part(Part part, Condition when, int readyDays) {
        for (FinishCases.Case each : finishes.of(part)) {
            Condition both = All.of(when, each.when());
            int start = start(part, each.finish(), both, readyDays);
            if (part.source() == Source.MAKE) {
                part.contains().forEach(child -> part(catalogue.part(child.part()), both, start));
                if (part.structure().joined() != Joined.WELDED) {
                    companions(part, both, start);
                }
            }
        }
    }

    /** What is needed by what goes into the assembly must be there when that begins; a weld passes it on. */
    private void companions(Part assembly, Condition when, int start) {
        for (Contained child : assembly.contains()) {
            Part taken = catalogue.part(child.part());
            for (Need need : parts.needsOf(taken.number())) {
                part(catalogue.part(need.part()), All.of(when, parts.unfolded(need.when())), start);
            }
            if (taken.source() == Source.MAKE && taken.structure().joined() == Joined.WELDED) {
                companions(taken, when, start);
            }
        }
    }

    private int start(Part part, String finish, Condition when, int readyDays) {
        int start = readyDays + stepDays.of(part, finish);
        chains.computeIfAbsent(start, days -> new ArrayList<>()).add(when);
        return start;
    }
}
