package boltlore.trades.scheduling;

import boltlore.catalogue.Part;
import boltlore.findings.Finding;
import boltlore.trades.costing.path.Step;
import boltlore.trades.scheduling.SchedulingFinding.SetBy;
import boltlore.trades.scheduling.finite.FiniteSchedule.Link;
import boltlore.trades.scheduling.finite.FiniteSchedule.Why;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What sets the day on which an order is finished, by the chain of what each of its days passes with: the work centre that it
 * waits for longest; where it waits for none, the delivery that the chain begins with; where there is none, the step that
 * takes longest.
 */
final class SetDate {

    private SetDate() {}

    static Finding of(WorkPlan plan, int order) {
        List<Link> chain = plan.schedule().chain(order);
        Map<Integer, Integer> waits = chain.stream()
                .filter(link -> link.why() == Why.WAIT)
                .collect(Collectors.groupingBy(Link::centre, TreeMap::new, Collectors.summingInt(Link::days)));
        return waits.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(wait -> Finding.of(
                        SetBy.CENTRE_FULL,
                        plan.centres().get(wait.getKey()).name(),
                        "centre",
                        plan.centres().get(wait.getKey()).says(),
                        "days",
                        wait.getValue()))
                .orElseGet(() -> step(plan, order, longest(plan, order, chain)));
    }

    private static Link longest(WorkPlan plan, int order, List<Link> chain) {
        return chain.stream()
                .filter(link -> done(plan, order, link).what() == Step.What.BUY)
                .findFirst()
                .orElseGet(() -> chain.stream()
                        .max(Comparator.comparingInt(Link::days))
                        .orElseThrow());
    }

    private static OrderWork.Done done(WorkPlan plan, int order, Link link) {
        return plan.orders().get(order).steps().get(link.step());
    }

    private static Finding step(WorkPlan plan, int order, Link link) {
        OrderWork.Done done = done(plan, order, link);
        Part part = done.part();
        SetBy kind =
                switch (done.what()) {
                    case BUY -> SetBy.PART_DELIVERED;
                    case MAKE, ASSEMBLE -> SetBy.PART_MADE;
                    case COAT -> SetBy.PART_COATED;
                    case FINISH_KIT -> SetBy.KIT_FINISHED;
                };
        String number = part == null ? "" : part.number().text();
        return Finding.of(
                kind, number, "part", number, "name", part == null ? "" : part.name(), "days", link.days());
    }
}
