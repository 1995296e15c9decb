package boltlore.trades.scheduling;

import boltlore.catalogue.Part;
import boltlore.findings.Finding;
import boltlore.trades.costing.path.Step;
import boltlore.trades.scheduling.SchedulingFinding.SetBy;
import boltlore.trades.scheduling.finite.FiniteSchedule.Link;
import boltlore.trades.scheduling.finite.FiniteSchedule.Why;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What sets the day on which an order is finished, by the chain of what each of its days passes with: the work centre that it
 * waits for longest; where it waits for none, the step whose work goes furthest beyond its days; where none does, the delivery
 * that the chain begins with; where there is none, the step that takes longest.
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
                .or(() -> beyond(plan, order, chain))
                .or(() -> longest(plan, order, chain).map(link -> step(plan, order, link)))
                .orElseGet(() -> Finding.of(SetBy.KIT_FINISHED, "", "days", 0));
    }

    private static Optional<Finding> beyond(WorkPlan plan, int order, List<Link> chain) {
        return chain.stream()
                .filter(link -> link.why() == Why.WORK)
                .map(Link::step)
                .max(Comparator.comparingInt(step -> over(plan, order, step)))
                .filter(step -> over(plan, order, step) > 0)
                .map(step -> beyond(plan, order, step));
    }

    private static int over(WorkPlan plan, int order, int step) {
        return plan.schedule().finish(order, step) - plan.schedule().start(order, step) - days(plan, order, step);
    }

    private static int days(WorkPlan plan, int order, int step) {
        return plan.orders().get(order).shopOrder().steps().get(step).days();
    }

    private static Finding beyond(WorkPlan plan, int order, int step) {
        LocalDate from = plan.schedule().shop().date(plan.schedule().start(order, step));
        LocalDate to = plan.schedule().shop().date(plan.schedule().finish(order, step));
        Part part = plan.orders().get(order).steps().get(step).part();
        String number = part == null ? "" : part.number().text();
        return Finding.of(
                part == null ? SetBy.KIT_BEYOND_ITS_DAYS : SetBy.PART_BEYOND_ITS_DAYS,
                number,
                "part",
                number,
                "name",
                part == null ? "" : part.name(),
                "days",
                days(plan, order, step),
                "taken",
                plan.schedule().finish(order, step) - plan.schedule().start(order, step),
                "off",
                plan.weekdaysOff(from, to));
    }

    private static Optional<Link> longest(WorkPlan plan, int order, List<Link> chain) {
        return chain.stream()
                .filter(link -> done(plan, order, link).what() == Step.What.BUY)
                .findFirst()
                .or(() -> chain.stream().max(Comparator.comparingInt(Link::days)));
    }

    private static OrderWork.Done done(WorkPlan plan, int order, Link link) {
        return plan.orders().get(order).steps().get(link.step());
    }

    private static Finding step(WorkPlan plan, int order, Link link) {
        OrderWork.Done done = done(plan, order, link);
        Part part = done.part();
        SetBy kind = switch (done.what()) {
            case BUY -> SetBy.PART_DELIVERED;
            case MAKE, ASSEMBLE -> SetBy.PART_MADE;
            case COAT -> SetBy.PART_COATED;
            case FINISH_KIT -> SetBy.KIT_FINISHED;
        };
        String number = part == null ? "" : part.number().text();
        return Finding.of(kind, number, "part", number, "name", part == null ? "" : part.name(), "days", link.days());
    }
}
