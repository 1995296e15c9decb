package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Line;
import boltlore.catalogue.Port;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.Digits;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A path or circuit with nothing at one of its positions, or with two neighbours that cannot be joined. */
final class Broken {

    private Broken() {}

    static List<PossibleFinding> findings(KitView kit) {
        List<PossibleFinding> all = new ArrayList<>();
        for (Fits.Run run : kit.family().fits().runs()) {
            run.steps().stream().distinct().map(step -> empty(kit, run, step)).forEach(all::add);
            Join.of(kit, run).forEach(join -> all.add(unjoined(kit, join)));
        }
        return all;
    }

    private static PossibleFinding empty(KitView kit, Fits.Run run, Fits.Step step) {
        Condition required =
                All.of(kit.kit().unfolded(run.required()), kit.kit().unfolded(step.when()));
        return PossibleFinding.of(
                run.name(),
                step.position().text(),
                All.of(required, new Condition.Not(kit.kit().filled(step.position()))),
                Join.Lines.at(kit, step).map(Line::name).toList(),
                "A valid order has nothing at position " + step.position() + ", through which " + run.name()
                        + " runs.");
    }

    private static PossibleFinding unjoined(KitView kit, Join join) {
        List<Join.Ends> apart = join.ends(kit)
                .filter(ends -> !ends.when().equals(Any.NEVER) && !ends.fit())
                .toList();
        return PossibleFinding.of(
                join.run().name(),
                join.from().position() + " to " + join.to().position(),
                Any.of(apart.stream().map(Join.Ends::when).toList()),
                apart.stream()
                        .flatMap(ends -> Stream.of(ends.from().name(), ends.to().name()))
                        .distinct()
                        .toList(),
                says(join, apart));
    }

    /** Names the first two; the example order shows which it has. */
    private static String says(Join join, List<Join.Ends> apart) {
        if (apart.isEmpty()) {
            return "Neighbours on " + join.run().name() + " cannot be joined.";
        }
        Join.Ends first = apart.get(0);
        return "A valid order cannot join " + said(first.from(), join.from().out(), first.out()) + " to "
                + said(first.to(), join.to().in(), first.in()) + " on "
                + join.run().name() + ".";
    }

    private static String said(Line line, String name, @Nullable Port port) {
        return line.part()
                + (port == null ? ", which has no port " + name + "," : " port " + name + " (" + of(port) + ")");
    }

    private static String of(Port port) {
        Port.Joint joint = port.joint();
        if (joint == null) {
            return port.kind() + ", nothing said of what flows";
        }
        String bore = joint.boreMm() == null ? "" : ", " + Digits.plain(joint.boreMm()) + " mm";
        String thread = joint.thread() == null ? "" : ", " + joint.thread().says();
        return joint.flow().written() + ", " + port.kind() + bore + thread + ", "
                + joint.half().name().toLowerCase(Locale.ROOT);
    }
}
