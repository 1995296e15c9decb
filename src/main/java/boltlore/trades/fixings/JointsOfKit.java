package boltlore.trades.fixings;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.Line;
import boltlore.catalogue.ThreadName;
import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Requirer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Goes through a bill: each bolt is a joint, and what the bolt itself asks for follows it. */
final class JointsOfKit {

    private static final Wording SHARED = new Wording(Map.of("en", "shared", "de", "gemeinsam", "fr", "commun"));

    private final FamilyPlan plan;
    private final List<Item> items;

    JointsOfKit(FamilyPlan plan, Bill bill) {
        this.plan = plan;
        this.items = bill.items();
    }

    List<BoltedJoint> all() {
        List<BoltedJoint> joints = new ArrayList<>();
        for (int at = 0; at < items.size(); at++) {
            Item item = items.get(at);
            if (isBolt(item)) {
                joints.add(joint(item, with(at)));
            }
            item.inside().stream()
                    .flatMap(Item::all)
                    .filter(JointsOfKit::isBolt)
                    .forEach(bolt -> joints.add(joint(bolt, beside(item, bolt))));
        }
        return List.copyOf(joints);
    }

    private static boolean isBolt(Item item) {
        Fixing fixing = item.part().fixing();
        return fixing != null && fixing.isBolt();
    }

    private BoltedJoint joint(Item bolt, List<BoltedJoint.Accompanying> with) {
        String shared = shared(bolt.origin());
        return new BoltedJoint(
                name(bolt.position().says(), shared),
                shared.isEmpty() ? bolt.position().name().text() : shared,
                bolt.position(),
                held(bolt.origin()),
                because(bolt.origin()),
                bolt.part(),
                bolt.quantity(),
                with,
                facts(bolt, shared));
    }

    private static Wording name(Wording position, String shared) {
        if (shared.isEmpty()) {
            return position;
        }
        Map<String, String> byLanguage = new TreeMap<>();
        SHARED.byLanguage()
                .forEach((language, word) ->
                        byLanguage.put(language, position.in(language) + " (" + word + ": " + shared + ")"));
        return new Wording(byLanguage);
    }

    /** The bill puts what a part asks for right behind it; nuts may also be asked for by what is bolted. */
    private List<BoltedJoint.Accompanying> with(int at) {
        List<BoltedJoint.Accompanying> with = new ArrayList<>();
        Item bolt = items.get(at);
        for (int next = at + 1; next < items.size() && isAskedBy(items.get(next), bolt); next++) {
            with.add(accompanying(items.get(next)));
        }
        items.stream().filter(item -> isNutOf(item, bolt)).forEach(nut -> with.add(accompanying(nut)));
        return List.copyOf(with);
    }

    /** Inside an assembly, the nuts and washers of its thread that the assembly holds. */
    private static List<BoltedJoint.Accompanying> beside(Item assembly, Item bolt) {
        return assembly.inside().stream()
                .flatMap(Item::all)
                .filter(item -> !isBolt(item) && isOfThread(item, bolt))
                .map(JointsOfKit::accompanying)
                .toList();
    }

    private static boolean isOfThread(Item item, Item bolt) {
        Fixing own = item.part().fixing();
        Fixing thread = bolt.part().fixing();
        return own != null && thread != null && ThreadName.mate(thread.thread(), own.thread());
    }

    private static BoltedJoint.Accompanying accompanying(Item item) {
        return new BoltedJoint.Accompanying(item.part(), item.quantity());
    }

    /** Of the bolt's thread on the same line, and not asked for by another bolt. */
    private boolean isNutOf(Item item, Item bolt) {
        Fixing nut = item.part().fixing();
        Fixing thread = bolt.part().fixing();
        return nut != null
                && thread != null
                && nut.isNut()
                && ThreadName.mate(thread.thread(), nut.thread())
                && item.line().equals(bolt.line())
                && items.stream().filter(JointsOfKit::isBolt).noneMatch(other -> isAskedBy(item, other));
    }

    private static boolean isAskedBy(Item item, Item bolt) {
        return item.origin() instanceof Origin.NeededBy needed
                && needed.asker() instanceof Requirer.OfPart part
                && part.part().equals(bolt.part().number());
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

    private Wording held(Origin origin) {
        if (origin instanceof Origin.AtJoint at) {
            return named(at.asker());
        }
        if (origin instanceof Origin.Inside inside) {
            return named(inside.assembly());
        }
        return origin instanceof Origin.NeededBy needed ? named(needed.asker()) : Wording.english("");
    }

    private Wording named(Requirer asker) {
        PartNumber part = asker instanceof Requirer.OfPart of
                ? of.part()
                : plan.family()
                        .line(((Requirer.OfLine) asker).line())
                        .map(Line::part)
                        .orElseThrow();
        return named(part);
    }

    private Wording named(PartNumber part) {
        return plan.part(part).name().with(" (" + part + ")");
    }
}
