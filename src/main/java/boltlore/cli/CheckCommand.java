package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.catalogue.json.PartlyRead;
import boltlore.checking.Check;
import boltlore.checking.Checks;
import boltlore.checking.Remark;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.findings.Severity;
import boltlore.json.JsonOut;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Whether a catalogue can be read, and is consistent as a real kit is. */
@Command(
        name = "check",
        description = "Read a catalogue, report every fault at once, and say where its data is not consistent.")
final class CheckCommand extends RoomCommand {

    @Parameters(index = "0", arity = "0..1", paramLabel = "CATALOGUE", description = "The catalogue's folder.")
    private @Nullable Path folder;

    @Option(names = "--translations", description = "List each text that is missing in a language, too.")
    private boolean translations;

    @Option(names = "--watch", description = "Check again whenever a file of the catalogue is saved; Ctrl-C ends it.")
    private boolean watch;

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        Path where = folder != null ? folder : catalogue.folder();
        return watch ? new Watched(where).each(() -> again(screen, where)) : once(screen, where);
    }

    private int again(Screen screen, Path where) {
        long begun = System.nanoTime();
        int exit = once(screen, where);
        screen.line("Checked in " + (System.nanoTime() - begun) / 1_000_000 + " ms. Waiting for the next saving.");
        screen.line("");
        screen.flush();
        return exit;
    }

    private int once(Screen screen, Path where) {
        return done(screen, CatalogueReader.readAsFar(where).then(read -> judged(screen, read, where)));
    }

    private Outcome<Integer> judged(Screen screen, PartlyRead read, Path where) {
        Outcome<Integer> accepted =
                AcceptedKinds.known(read.rest().families().values(), where).then(families -> Outcome.sound(Exit.OK));
        List<Fault> faults = Stream.concat(read.whole().faults().stream(), accepted.faults().stream())
                .toList();
        List<Remark> remarks = Checks.checkRest(read.rest(), read.faulty(), read.workshopKnown(), read.familiesKnown());
        if (json()) {
            screen.line(JsonOut.object()
                    .put("revision", read.rest().revision())
                    .put("findings", JsonOut.list(remarks, CheckCommand::json))
                    .written()
                    .stripTrailing());
        } else {
            print(screen, read.rest(), remarks, faults.isEmpty());
        }
        int exit = remarks.isEmpty() ? Exit.OK : Exit.STOPPED;
        return faults.isEmpty() ? Outcome.sound(exit) : Outcome.faulty(faults);
    }

    private void print(Screen screen, Catalogue known, List<Remark> remarks, boolean sound) {
        if (sound) {
            screen.wrapped(0, size(known));
        }
        SortedMap<Check, List<Remark>> byCheck =
                remarks.stream().collect(Collectors.groupingBy(Remark::check, TreeMap::new, Collectors.toList()));
        List<Remark> untranslated = byCheck.getOrDefault(Check.TRANSLATION, List.of());
        if (!translations) {
            byCheck.remove(Check.TRANSLATION);
        }
        byCheck.forEach((check, found) -> print(screen, check, found));
        if (!untranslated.isEmpty() && !translations) {
            screen.wrapped(
                    0, "Not translated: " + counted(untranslated.size(), "text") + ". List them with --translations.");
        }
        conclude(screen, remarks.size() - untranslated.size(), untranslated.size(), sound);
    }

    private static void conclude(Screen screen, int others, int untranslated, boolean sound) {
        if (others + untranslated > 0) {
            screen.line("To check: " + others + " in the data, " + counted(untranslated, "text") + " to translate.");
        } else if (sound) {
            screen.line("The data is consistent.");
        }
        if (!sound) {
            screen.wrapped(
                    0,
                    "What the errors leave open was not checked: when they are corrected, run check again. More may be"
                            + " found then.");
        }
    }

    private static void print(Screen screen, Check check, List<Remark> found) {
        screen.line("Check, " + check.written() + ": " + found.size());
        found.forEach(remark -> screen.wrapped(2, remark.says()));
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static String size(Catalogue known) {
        String families =
                known.families().values().stream().map(CheckCommand::size).collect(Collectors.joining("; "));
        return "No errors: " + counted(known.parts().size(), "part") + "; " + families + ". Revision "
                + known.revision() + ".";
    }

    private static String size(Family family) {
        return family.name() + " with " + counted(family.options().size(), "option") + ", "
                + counted(family.limits().size(), "limit") + ", "
                + counted(family.positions().size(), "position") + ", "
                + counted((int) family.lines().count(), "line");
    }

    private static JsonOut json(Remark remark) {
        return JsonOut.object()
                .put("severity", Severity.CHECK.code())
                .put("kind", remark.check().written())
                .put("subject", remark.about())
                .put("found", remark.found())
                .put("expected", remark.expected())
                .put("advice", remark.advice());
    }
}
