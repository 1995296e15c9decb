package boltlore.trades.costing.path;

import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What sets the lead time of a kit. Days are calendar days from the day on which everything may be ordered.
 *
 * @param slots of all steps
 */
public record LeadPath(int days, Map<Step, Slot<Step>> slots) {

    static LeadPath of(List<Activity<Step>> activities) {
        Network<Step> network = new Network<>(activities);
        return new LeadPath(network.days(), network.schedule());
    }

    Slot<Step> slot(Step step) {
        return Objects.requireNonNull(slots.get(step));
    }

    /** The chain from the first step to the shipped kit; of several equal ones the first in the order of the bill. */
    public List<Slot<Step>> chain() {
        LinkedList<Slot<Step>> chain = new LinkedList<>();
        slots.values().stream()
                .filter(slot -> slot.latestFinish() == days && slot.critical())
                .findFirst()
                .ifPresent(chain::add);
        while (!chain.isEmpty()) {
            Slot<Step> first = chain.getFirst();
            Slot<Step> before = before(first).findFirst().orElse(null);
            if (before == null) {
                break;
            }
            chain.addFirst(before);
        }
        return List.copyOf(chain);
    }

    private Stream<Slot<Step>> before(Slot<Step> slot) {
        return slot.activity().after().stream()
                .flatMap(step -> Stream.ofNullable(slots.get(step)))
                .filter(each -> each.critical() && each.earliestFinish() == slot.earliestStart());
    }

    /** Of each part that is not on the chain the step with the least slack, those with the least first. */
    public List<Slot<Step>> next(int most) {
        Set<PartNumber> onChain = chain().stream()
                .flatMap(slot -> Stream.ofNullable(slot.activity().what().part()))
                .map(Part::number)
                .collect(Collectors.toSet());
        return byPart(slots.values().stream())
                .filter(slot -> slot.activity().what().part() != null
                        && !onChain.contains(slot.activity().what().part().number()))
                .sorted(Comparator.comparingInt(Slot::slack))
                .limit(most)
                .toList();
    }

    /** What waits for nothing, by the last day on which it may begin. */
    public List<Slot<Step>> first(int most) {
        return byPart(slots.values().stream()
                        .filter(slot -> slot.activity().after().isEmpty()))
                .sorted(Comparator.comparingInt(Slot::latestStart))
                .limit(most)
                .toList();
    }

    private static Stream<Slot<Step>> byPart(Stream<Slot<Step>> all) {
        Map<PartNumber, Slot<Step>> least = new TreeMap<>();
        all.forEach(slot -> {
            Part part = slot.activity().what().part();
            if (part != null) {
                least.merge(part.number(), slot, (one, other) -> other.slack() < one.slack() ? other : one);
            }
        });
        return least.values().stream();
    }

    /** Days by which the kit ships earlier where that part takes half its days, rounded up, at each of its places. */
    public int gainOfHalving(PartNumber part) {
        List<Activity<Step>> shorter = new ArrayList<>();
        slots.values().forEach(slot -> shorter.add(halved(slot.activity(), part)));
        return days - new Network<>(shorter).days();
    }

    private static Activity<Step> halved(Activity<Step> activity, PartNumber part) {
        Part of = activity.what().part();
        boolean its = of != null && of.number().equals(part) && activity.what().what() != Step.What.COAT;
        return its ? new Activity<>(activity.what(), (activity.days() + 1) / 2, activity.after()) : activity;
    }

    /** Gains of halving each part on the chain, in its order. */
    public Map<PartNumber, Integer> gains() {
        Map<PartNumber, Integer> gains = new LinkedHashMap<>();
        for (Slot<Step> slot : chain()) {
            Part part = slot.activity().what().part();
            if (part != null && slot.activity().what().what() != Step.What.COAT) {
                gains.put(part.number(), gainOfHalving(part.number()));
            }
        }
        return gains;
    }
}
