package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.checking.Checks;
import boltlore.checking.Remark;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Whether a catalogue can be read, and hangs together as a real kit does. */
@Command(
        name = "check",
        description = "Read a catalogue, report every fault at once, and say where its data does not hang together.")
final class CheckCommand extends RoomCommand {

    @Parameters(index = "0", arity = "0..1", paramLabel = "CATALOGUE", description = "The catalogue's folder.")
    private @Nullable Path folder;

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        Outcome<Catalogue> read = CatalogueReader.read(folder != null ? folder : catalogue.folder());
        return done(screen, read.then(known -> Outcome.sound(answer(screen, known))));
    }

    private int answer(Screen screen, Catalogue known) {
        List<Remark> remarks = Checks.of(known);
        if (json()) {
            screen.line(JsonOut.object()
                    .put("revision", known.revision())
                    .put("doubtful", JsonOut.list(remarks, CheckCommand::json))
                    .written()
                    .stripTrailing());
        } else {
            print(screen, known, remarks);
        }
        return remarks.isEmpty() ? Exit.OK : Exit.STOPPED;
    }

    private static void print(Screen screen, Catalogue known, List<Remark> remarks) {
        for (Remark remark : remarks) {
            screen.wrapped(
                    0,
                    "doubtful, " + remark.about() + ": found " + remark.found() + "; expected " + remark.expected()
                            + ". " + remark.advice());
        }
        String families =
                known.families().values().stream().map(CheckCommand::size).collect(Collectors.joining("; "));
        screen.wrapped(
                0,
                "Read without fault: " + known.parts().size() + " parts; " + families + ". Revision " + known.revision()
                        + ".");
        screen.line(remarks.isEmpty() ? "The data hangs together." : remarks.size() + " doubtful.");
    }

    private static String size(Family family) {
        return family.name() + " with " + family.options().size() + " options, "
                + family.limits().size() + " limits, " + family.positions().size() + " positions, "
                + family.lines().count() + " lines";
    }

    private static JsonOut json(Remark remark) {
        return JsonOut.object()
                .put("about", remark.about())
                .put("check", remark.check().name())
                .put("found", remark.found())
                .put("expected", remark.expected())
                .put("advice", remark.advice());
    }
}
