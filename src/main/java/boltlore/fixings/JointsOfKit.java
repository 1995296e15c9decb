package boltlore.fixings;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.Line;
import boltlore.measure.PartNumber;
import boltlore.resolution.Asker;
import boltlore.resolution.FamilyPlan;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Goes through a bill: each bolt is a joint, and what the bolt itself asks for follows it. */
final class JointsOfKit {

    private final FamilyPlan plan;
    private final List<Item> items;

    JointsOfKit(FamilyPlan plan, Bill bill) {
        this.plan = plan;
        this.items = bill.items();
    }

    List<BoltedJoint> all() {
        List<BoltedJoint> joints = new ArrayList<>();
        for (int at = 0; at < items.size(); at++) {
            Fixing fixing = items.get(at).part().fixing();
            if (fixing != null && fixing.lengthMm() != null) {
                joints.add(joint(at, fixing));
            }
        }
        return List.copyOf(joints);
    }

    private BoltedJoint joint(int at, Fixing fixing) {
        Item bolt = items.get(at);
        String shared = shared(bolt.origin());
        String position = bolt.position().says().english();
        return new BoltedJoint(
                shared.isEmpty() ? position : position + " (shared: " + shared + ")",
                bolt.position(),
                held(bolt.origin()),
                because(bolt.origin()),
                bolt.part(),
                fixing,
                bolt.quantity(),
                with(at),
                facts(bolt, shared));
    }

    /** The bill puts what a part asks for right behind it. */
    private List<Accompanying> with(int at) {
        List<Accompanying> with = new ArrayList<>();
        PartNumber bolt = items.get(at).part().number();
        for (int next = at + 1; next < items.size() && isAskedBy(items.get(next), bolt); next++) {
            with.add(new Accompanying(items.get(next).part(), items.get(next).quantity()));
        }
        return List.copyOf(with);
    }

    private static boolean isAskedBy(Item item, PartNumber bolt) {
        return item.origin() instanceof Origin.NeededBy needed
                && needed.asker() instanceof Asker.OfPart part
                && part.part().equals(bolt);
    }

    private @Nullable JointFacts facts(Item bolt, String shared) {
        return plan.family().joints().stream()
                .filter(facts -> shared.isEmpty()
                        ? bolt.position().name().equals(facts.position())
                        : facts.joint().equals(shared))
                .findFirst()
                .orElse(null);
    }

    private static String shared(Origin origin) {
        return origin instanceof Origin.AtJoint at ? at.joint() : "";
    }

    private static String because(Origin origin) {
        if (origin instanceof Origin.AtJoint at) {
            return at.because();
        }
        return origin instanceof Origin.NeededBy needed ? needed.because() : "";
    }

    private String held(Origin origin) {
        if (origin instanceof Origin.AtJoint at) {
            return named(at.asker());
        }
        return origin instanceof Origin.NeededBy needed ? named(needed.asker()) : "";
    }

    private String named(Asker asker) {
        PartNumber part = asker instanceof Asker.OfPart of
                ? of.part()
                : plan.family()
                        .line(((Asker.OfLine) asker).line())
                        .map(Line::part)
                        .orElseThrow();
        return plan.part(part).name().english() + " (" + part + ")";
    }
}
