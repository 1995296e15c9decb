package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Flow;
import boltlore.catalogue.Line;
import boltlore.catalogue.Port;
import boltlore.findings.Finding;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.Digits;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import boltlore.proof.KitView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A path or circuit with nothing at one of its positions, or with two neighbours that cannot be joined. */
final class Broken {

    private Broken() {}

    static List<FitFinding.Possible> findings(KitView kit) {
        List<FitFinding.Possible> all = new ArrayList<>();
        for (Fits.Run run : kit.family().fits().runs()) {
            run.steps().stream().distinct().map(step -> empty(kit, run, step)).forEach(all::add);
            Join.of(kit, run).forEach(join -> all.add(unjoined(kit, join)));
        }
        return all;
    }

    private static FitFinding.Possible empty(KitView kit, Fits.Run run, Fits.Step step) {
        Condition required =
                All.of(kit.kit().unfolded(run.required()), kit.kit().unfolded(step.when()));
        return FitFinding.NOTHING_ON_THE_WAY.when(
                All.of(required, Any.but(kit.kit().filled(step.position()))),
                run.name(),
                step.position().text(),
                Join.Lines.at(kit, step).map(Line::name).toList(),
                "position",
                said(kit, step.position()),
                "run",
                run.name());
    }

    static Wording said(KitView kit, PositionName position) {
        return kit.kit().position(position).says().with(" (" + position + ")");
    }

    private static FitFinding.Possible unjoined(KitView kit, Join join) {
        List<Join.Ends> apart = join.ends(kit)
                .filter(ends -> !ends.when().equals(Any.NEVER) && !ends.fit())
                .toList();
        return FitFinding.NEIGHBOURS_APART.when(
                Any.of(apart.stream().map(Join.Ends::when).toList()),
                join.run().name(),
                join.from().position() + " to " + join.to().position(),
                apart.stream()
                        .flatMap(ends -> Stream.of(ends.from().name(), ends.to().name()))
                        .distinct()
                        .toList(),
                "from",
                apart.isEmpty()
                        ? ""
                        : said(kit, apart.get(0).from(), join.from().out()),
                "to",
                apart.isEmpty() ? "" : said(kit, apart.get(0).to(), join.to().in()),
                "run",
                join.run().name());
    }

    private static Finding said(KitView kit, Line line, String name) {
        Port port = Join.Lines.port(kit, line, name);
        Port.Joint joint = port == null ? null : port.joint();
        BigDecimal bore = joint == null ? null : joint.boreMm();
        FitFinding words = port == null
                ? FitFinding.NO_SUCH_PORT
                : joint == null ? FitFinding.PORT_UNKNOWN : bore == null ? FitFinding.PORT : FitFinding.PORT_OF_BORE;
        return Finding.of(
                words,
                line.name().text(),
                "part",
                BoxContents.named(kit, line.part()),
                "port",
                name,
                "kind",
                port == null ? "" : kind(port),
                "flow",
                joint == null ? 0 : number(joint.flow()),
                "half",
                joint == null || joint.half() == Port.Half.MALE ? 0 : 1,
                "bore",
                bore == null ? BigDecimal.ZERO : new BigDecimal(Digits.plain(bore)));
    }

    private static String kind(Port port) {
        Port.Joint joint = port.joint();
        return joint == null || joint.thread() == null
                ? port.kind()
                : port.kind() + ", " + joint.thread().says();
    }

    /** As the sentences count them. */
    private static int number(Flow flow) {
        return switch (flow) {
            case HV_DC -> 0;
            case AC_MAINS -> 1;
            case TWELVE_VOLT -> 2;
            case COOLANT -> 3;
            case REFRIGERANT -> 4;
        };
    }
}
