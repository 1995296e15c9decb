package boltlore.bill;

import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.choices.Conditions;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.order.Order;
import boltlore.resolution.Asker;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Kit;
import boltlore.resolution.Resolution;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Explodes a resolved kit into items: from each line downwards, then what each item asks for. */
public final class BillMaker {

    private record JointOfPart(String joint, PartNumber part) {}

    /** The largest ask so far on a joint, and the place where it was first asked for. */
    private record JointAsk(Place place, Asker asker, String because, BigDecimal atLeast, List<Asker> askers) {}

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

    public static Bill of(FamilyPlan plan, Order order, Resolution.Resolved resolved) {
        return new Bill(order, resolved, new BillMaker(plan, resolved).items());
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
        line.needs().forEach(need -> ask(place, new Asker.OfLine(line.name()), need, line.quantity()));
    }

    private void add(Place place, Part part, BigDecimal quantity, Origin origin) {
        Item item = explode(place, part, quantity, origin, 1, false);
        items.add(item);
        item.all()
                .forEach(each -> plan.needsOf(each.part().number())
                        .forEach(need -> ask(place, new Asker.OfPart(each.part().number()), need, each.quantity())));
    }

    private void ask(Place place, Asker asker, Need need, BigDecimal askers) {
        if (!Conditions.holds(need.when(), resolved.choices(), kit.filled()::contains)) {
            return;
        }
        if (need.ask() instanceof Need.Each each) {
            Origin origin = new Origin.NeededBy(asker, need.because());
            add(place, plan.part(need.part()), askers.multiply(each.quantity()), origin);
        } else if (need.ask() instanceof Need.AtJoint at) {
            JointAsk ask = new JointAsk(place, asker, need.because(), at.atLeast(), List.of(asker));
            joints.merge(new JointOfPart(at.joint(), need.part()), ask, BillMaker::larger);
        }
    }

    /** The larger ask decides the quantity and the reason; the first asker's place stays. */
    private static JointAsk larger(JointAsk first, JointAsk second) {
        JointAsk largest = second.atLeast().compareTo(first.atLeast()) > 0 ? second : first;
        List<Asker> askers = new ArrayList<>(first.askers());
        askers.addAll(second.askers());
        return new JointAsk(first.place(), largest.asker(), largest.because(), largest.atLeast(), askers);
    }

    private Item explode(Place place, Part part, BigDecimal quantity, Origin origin, int level, boolean insidePicked) {
        boolean picked = !insidePicked && part.pickedWhole();
        List<Item> inside = part.contains().stream()
                .map(child -> explode(
                        place,
                        plan.part(child.part()),
                        quantity.multiply(child.quantity()),
                        new Origin.Inside(part.number()),
                        level + 1,
                        insidePicked || picked))
                .toList();
        String finish = kit.finishes().getOrDefault(part.number(), "");
        return new Item(level, place.position(), place.line(), part, finish, quantity, origin, picked, inside);
    }
}
