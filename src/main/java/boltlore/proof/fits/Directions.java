package boltlore.proof.fits;

import boltlore.catalogue.Fits;
import boltlore.catalogue.Line;
import boltlore.catalogue.Port;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.proof.KitView;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A path or circuit that goes into an outlet, or out of an inlet: a pump turned round. */
final class Directions {

    private Directions() {}

    static List<FitFinding.Possible> findings(KitView kit) {
        List<FitFinding.Possible> all = new ArrayList<>();
        for (Fits.Run run : kit.family().fits().runs()) {
            run.steps().stream().distinct().forEach(step -> {
                add(kit, run, step, step.in(), Port.Way.OUT, all);
                add(kit, run, step, step.out(), Port.Way.IN, all);
            });
        }
        return all;
    }

    private static void add(
            KitView kit, Fits.Run run, Fits.Step step, String port, Port.Way wrong, List<FitFinding.Possible> all) {
        List<Line> turned = Join.Lines.at(kit, step)
                .filter(line -> way(Join.Lines.port(kit, line, port)) == wrong)
                .toList();
        if (turned.isEmpty()) {
            return;
        }
        all.add(FitFinding.FLOWS_BACKWARDS.when(
                All.of(
                        kit.kit().unfolded(run.required()),
                        kit.kit().unfolded(step.when()),
                        Any.of(turned.stream()
                                .map(line -> kit.kit().in(line.name()))
                                .toList())),
                run.name(),
                step.position() + " " + port,
                turned.stream().map(Line::name).toList(),
                "run",
                run.name(),
                "part",
                BoxContents.named(kit, turned.get(0).part()),
                "port",
                port,
                "way",
                wrong == Port.Way.OUT ? 0 : 1));
    }

    private static Port.@Nullable Way way(@Nullable Port port) {
        return port == null || port.joint() == null ? null : port.joint().way();
    }
}
