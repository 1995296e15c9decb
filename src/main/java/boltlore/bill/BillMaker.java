package boltlore.bill;

import boltlore.catalogue.Contained;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.choices.Conditions;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.order.Order;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Kit;
import boltlore.resolution.Requirer;
import boltlore.resolution.Resolution;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Explodes a resolved kit into items: from each line downwards, then what each item asks for. */
public final class BillMaker {

    private record JointOfPart(String joint, PartNumber part) {}

    /** The largest ask so far on a joint, and the place where it was first asked for. */
    private record JointAsk(Place place, Requirer asker, String because, BigDecimal atLeast, List<Requirer> askers) {}

    /** A need of so many askers at that place. */
    private record Ask(Place place, Requirer asker, Need need, BigDecimal askers) {}

    private record Place(Position position, LineName line) {}

    private final FamilyPlan plan;
    private final Resolution.Resolved resolved;
    private final Kit kit;
    private final List<Item> items = new ArrayList<>();
    private final Map<JointOfPart, JointAsk> joints = new LinkedHashMap<>();

    private BillMaker(FamilyPlan plan, Resolution.Resolved resolved) {
        this.plan = plan;
        this.resolved = resolved;
        this.kit = resolved.kit();
    }

    /** With parts cut to what was measured on the order's vehicle. */
    public static Bill make(FamilyPlan plan, Order order, Resolution.Resolved resolved) {
        return new Bill(order, resolved, new BillMaker(plan.measured(order), resolved).items());
    }

    private List<Item> items() {
        for (Position position : plan.family().positions()) {
            for (Line line : position.lines()) {
                if (kit.lines().contains(line.name())) {
                    line(new Place(position, line.name()), line);
                }
            }
        }
        while (!joints.isEmpty()) {
            joint(earliest());
        }
        return List.copyOf(items);
    }

    private void joint(Map.Entry<JointOfPart, JointAsk> next) {
        joints.remove(next.getKey());
        JointAsk ask = next.getValue();
        Origin origin = new Origin.AtJoint(next.getKey().joint(), ask.asker(), ask.because(), ask.askers());
        add(ask.place(), plan.part(next.getKey().part()), ask.atLeast(), origin);
    }

    /** A joint's part may itself ask on a further joint; askers come first so that each ask is in when its turn comes. */
    private Map.Entry<JointOfPart, JointAsk> earliest() {
        return joints.entrySet().stream()
                .min(Comparator.comparingInt(
                        joint -> plan.askersFirst().indexOf(joint.getKey().part())))
                .orElseThrow();
    }

    private void line(Place place, Line line) {
        add(place, plan.part(line.part()), line.quantity(), new Origin.OwnLine());
        line.needs()
                .forEach(need -> answer(new ArrayDeque<>(
                        List.of(new Ask(place, new Requirer.OfLine(line.name()), need, line.quantity())))));
    }

    /** The item, and right behind it what it needs and what that needs. */
    private void add(Place place, Part part, BigDecimal quantity, Origin origin) {
        Deque<Ask> open = new ArrayDeque<>();
        asks(place, added(place, part, quantity, origin), open);
        answer(open);
    }

    private void answer(Deque<Ask> open) {
        while (!open.isEmpty()) {
            Ask next = open.pop();
            answered(next).ifPresent(item -> asks(next.place(), item, open));
        }
    }

    /** What the item asks for comes before all that is open. */
    private void asks(Place place, Item item, Deque<Ask> open) {
        List<Ask> asks = new ArrayList<>();
        item.all().forEach(each -> {
            PartNumber number = each.part().number();
            plan.needsOf(number)
                    .forEach(need -> asks.add(new Ask(place, new Requirer.OfPart(number), need, each.quantity())));
        });
        Collections.reverse(asks);
        asks.forEach(open::push);
    }

    private Item added(Place place, Part part, BigDecimal quantity, Origin origin) {
        Item item = exploded(place, part, quantity, origin);
        items.add(item);
        return item;
    }

    private Optional<Item> answered(Ask ask) {
        Need need = ask.need();
        if (!Conditions.holds(need.when(), resolved.choices(), kit.filled()::contains)) {
            return Optional.empty();
        }
        if (need.ask() instanceof Need.AtJoint at) {
            JointAsk joint = new JointAsk(ask.place(), ask.asker(), need.because(), at.atLeast(), List.of(ask.asker()));
            joints.merge(new JointOfPart(at.joint(), need.part()), joint, BillMaker::larger);
            return Optional.empty();
        }
        BigDecimal quantity = ask.askers().multiply(((Need.Each) need.ask()).quantity());
        Origin origin = new Origin.NeededBy(ask.asker(), need.because());
        return Optional.of(added(ask.place(), plan.part(need.part()), quantity, origin));
    }

    /** The larger ask decides the quantity and the reason; the first asker's place stays. */
    private static JointAsk larger(JointAsk first, JointAsk second) {
        JointAsk largest = second.atLeast().compareTo(first.atLeast()) > 0 ? second : first;
        List<Requirer> askers = new ArrayList<>(first.askers());
        askers.addAll(second.askers());
        return new JointAsk(first.place(), largest.asker(), largest.because(), largest.atLeast(), askers);
    }

    /** A part with all that is inside it, from the innermost outwards. */
    private Item exploded(Place place, Part part, BigDecimal quantity, Origin origin) {
        Deque<Opened> open = new ArrayDeque<>(List.of(new Opened(part, quantity, origin, 1, false, new ArrayList<>())));
        while (true) {
            Opened top = open.element();
            if (top.inside().size() < top.part().contains().size()) {
                open.push(top.next(plan));
                continue;
            }
            open.remove();
            String finish = kit.finishes().getOrDefault(top.part().number(), "");
            Item item = top.item(place, finish);
            if (open.isEmpty()) {
                return item;
            }
            open.element().inside().add(item);
        }
    }

    /** A part whose inside is being exploded. */
    private record Opened(
            Part part, BigDecimal quantity, Origin origin, int level, boolean insidePicked, List<Item> inside) {

        Opened next(FamilyPlan plan) {
            Contained child = part.contains().get(inside.size());
            return new Opened(
                    plan.part(child.part()),
                    quantity.multiply(child.quantity()),
                    new Origin.Inside(part.number()),
                    level + 1,
                    insidePicked || part.pickedWhole(),
                    new ArrayList<>());
        }

        Item item(Place place, String finish) {
            boolean picked = !insidePicked && part.pickedWhole() && !part.reused();
            return new Item(
                    level, place.position(), place.line(), part, finish, quantity, origin, picked, List.copyOf(inside));
        }
    }
}
