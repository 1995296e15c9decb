package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Port;
import boltlore.catalogue.Position;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Each step of a path or circuit names ports that some part at its position has; whether each order has one, is proved. */
record PortsOfRuns(Catalogue catalogue, Family family) {

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> new PortsOfRuns(catalogue, family).all());
    }

    private Stream<Remark> all() {
        return family.fits().runs().stream()
                .flatMap(run -> run.steps().stream()
                        .flatMap(step -> Stream.of(step.in(), step.out())
                                .filter(name -> !name.isEmpty())
                                .filter(name -> !someHas(step, name, run))
                                .map(name -> remark(run, step, name))));
    }

    private boolean someHas(Fits.Step step, String name, Fits.Run run) {
        return family.position(step.position()).stream()
                .map(Position::lines)
                .flatMap(lines -> lines.stream().map(line -> catalogue.part(line.part())))
                .anyMatch(part -> flows(part.port(name), run));
    }

    private static boolean flows(@Nullable Port port, Fits.Run run) {
        return port != null && port.joint() != null && port.joint().flow() == run.flow();
    }

    private Remark remark(Fits.Run run, Fits.Step step, String name) {
        return new Remark(
                "path " + family.name() + "/" + run.name(),
                Check.PORT,
                "port '" + name + "' at position " + step.position() + ", which no part there has",
                "a port of " + run.flow().written() + " of the parts there",
                "Correct the step in fits.json, or the ports of the parts");
    }
}
