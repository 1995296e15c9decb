package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Family;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.Need;
import boltlore.faults.Nearest;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** A joint by name in joints.json is one that needs share; a name mistyped would leave a joint without its facts. */
final class SharedJointsCheck {

    private SharedJointsCheck() {}

    static void check(Catalogue catalogue, Family family, Reading reading) {
        Set<String> shared = new TreeSet<>();
        Stream.of(
                        catalogue.parts().values().stream().map(part -> part.needs()),
                        family.lines().map(line -> line.needs()),
                        family.companions().stream().map(Companion::needs))
                .flatMap(needs -> needs)
                .flatMap(List::stream)
                .forEach(need -> note(need, shared));
        family.joints().stream()
                .filter(joint -> !joint.joint().isEmpty() && !shared.contains(joint.joint()))
                .forEach(joint -> unknown(joint, shared, reading));
    }

    private static void note(Need need, Set<String> shared) {
        if (need.ask() instanceof Need.AtJoint at) {
            shared.add(at.joint());
        }
    }

    private static void unknown(JointFacts joint, Set<String> shared, Reading reading) {
        reading.faults()
                .add(reading.sources()
                        .of(joint)
                        .fault(
                                "the shared joint '" + joint.joint() + "', which nothing asks for",
                                shared.isEmpty() ? "no shared joint" : "one of " + String.join(", ", shared),
                                Nearest.advice(joint.joint(), shared, "")));
    }
}
