package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.checking.Check;
import boltlore.checking.Checks;
import boltlore.checking.Remark;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
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

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        Path where = folder != null ? folder : catalogue.folder();
        return done(
                screen,
                CatalogueReader.read(where)
                        .then(known -> AcceptedKinds.known(known.families().values(), where)
                                .then(families -> Outcome.sound(answer(screen, known)))));
    }

    private int answer(Screen screen, Catalogue known) {
        List<Remark> remarks = Checks.check(known);
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

    private void print(Screen screen, Catalogue known, List<Remark> remarks) {
        String families =
                known.families().values().stream().map(CheckCommand::size).collect(Collectors.joining("; "));
        screen.wrapped(
                0,
                "No errors: " + known.parts().size() + " parts; " + families + ". Revision " + known.revision() + ".");
        SortedMap<Check, List<Remark>> byCheck =
                remarks.stream().collect(Collectors.groupingBy(Remark::check, TreeMap::new, Collectors.toList()));
        List<Remark> untranslated = byCheck.getOrDefault(Check.TRANSLATION, List.of());
        if (!translations) {
            byCheck.remove(Check.TRANSLATION);
        }
        byCheck.forEach((check, found) -> print(screen, check, found));
        if (!untranslated.isEmpty() && !translations) {
            screen.wrapped(0, "Not translated: " + texts(untranslated.size()) + ". List them with --translations.");
        }
        int others = remarks.size() - untranslated.size();
        screen.line(
                remarks.isEmpty()
                        ? "The data is consistent."
                        : "To check: " + others + " in the data, " + texts(untranslated.size()) + " to translate.");
    }

    private static void print(Screen screen, Check check, List<Remark> found) {
        screen.line("Check, " + check.written() + ": " + found.size());
        for (Remark remark : found) {
            screen.wrapped(
                    2,
                    remark.about() + ": found " + remark.found() + "; expected " + remark.expected() + ". "
                            + remark.advice() + ".");
        }
    }

    private static String texts(int count) {
        return count == 1 ? "1 text" : count + " texts";
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
