package boltlore.cli;

import boltlore.bring.Beginnings;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.exports.NewFiles;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.CurrencyReading;
import boltlore.json.TextShape;
import boltlore.measure.PartNumber;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes small working files to begin with. */
@Command(
        name = "new",
        description =
                "Make a small working start of a workshop, a family, a part, a position or an option. No file that is"
                        + " there is changed.")
final class NewCommand extends RoomCommand {

    /** What can be begun. */
    enum What {
        workshop,
        family,
        part,
        position,
        option
    }

    @Parameters(index = "0", paramLabel = "WHAT", description = "One of ${COMPLETION-CANDIDATES}.")
    private What what = What.workshop;

    @Parameters(index = "1", paramLabel = "NAME", description = "Of a workshop its folder, else a name or part number.")
    private String name = "";

    @Option(names = "--family", paramLabel = "FAMILY", description = "The family of a part, position or option.")
    private @Nullable String family;

    @Option(names = "--part", paramLabel = "PART", description = "The part of a position.")
    private @Nullable String part;

    @Option(names = "--currency", paramLabel = "CODE", description = "A workshop's currency; EUR without it.")
    private String currency = "EUR";

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        Outcome<SortedMap<String, String>> files = what == What.workshop ? workshop() : within();
        if (what == What.option && files.faults().isEmpty()) {
            screen.wrapped(
                    0, "Put this among the 'options' of family.json, and conditions that name it into the lines:");
            screen.line(Beginnings.optionText(name).stripTrailing());
            return Exit.OK;
        }
        Path folder = what == What.workshop ? Path.of(name) : catalogue.folder();
        if (!files.faults().isEmpty()) {
            return done(screen, files.then(any -> Outcome.sound(Exit.OK)));
        }
        Outcome<List<Path>> written = files.then(texts -> NewFiles.writeTexts(folder, texts));
        if (!written.faults().isEmpty()) {
            return refused(written.faults(), Exit.NOT_WRITTEN);
        }
        written.then(all -> {
            all.stream()
                    .filter(file -> !file.toString().contains("schema"))
                    .forEach(file -> screen.line(file.toString()));
            return Outcome.sound(all);
        });
        screen.wrapped(0, next(folder));
        return Exit.OK;
    }

    private String next(Path folder) {
        return what == What.workshop
                ? "Next: boltlore new family NAME --catalogue " + folder
                : "Next: boltlore check " + folder + ", boltlore prove --catalogue " + folder
                        + ". Change what stands in the files; check --watch tells at each saving what is wrong.";
    }

    private Outcome<SortedMap<String, String>> workshop() {
        String says = String.valueOf(Path.of(name).toAbsolutePath().normalize().getFileName());
        if (CurrencyReading.known(currency).isEmpty()) {
            return fault("currency '" + currency + "'", CurrencyReading.EXPECTED, CurrencyReading.ADVICE);
        }
        return TextShape.LINE.fits().test(says)
                ? Outcome.sound(Beginnings.workshop(says, currency))
                : fault("a folder named '" + says + "'", TextShape.LINE.says(), "");
    }

    private Outcome<SortedMap<String, String>> within() {
        TextShape shape = what == What.part ? TextShape.PART_NUMBER : TextShape.NAME;
        if (!shape.fits().test(name)) {
            return fault("'" + name + "'", shape.says(), "");
        }
        return CatalogueReader.readAsFar(catalogue.folder()).then(read -> files(read.rest()));
    }

    private Outcome<SortedMap<String, String>> files(Catalogue known) {
        Beginnings.Place place = place(known);
        if (what == What.family) {
            return Outcome.sound(Beginnings.family(name, place));
        }
        String of = family != null || known.families().size() != 1
                ? String.valueOf(family)
                : known.families().keySet().iterator().next();
        return FamiliesAsked.find(List.of(of), known).then(found -> switch (what) {
            case part ->
                known.parts().containsKey(new PartNumber(name))
                        ? fault("part '" + name + "', which is there already", "a number that no part has", "")
                        : Outcome.sound(Beginnings.part(name, of, place));
            case position ->
                part != null && known.parts().containsKey(new PartNumber(part))
                        ? Outcome.sound(Beginnings.position(name, part, of, place))
                        : fault("part '" + part + "'", "--part with a part of the catalogue", "");
            default -> Outcome.sound(new TreeMap<>());
        });
    }

    private Beginnings.Place place(Catalogue known) {
        var workshop = known.workshop();
        return new Beginnings.Place(
                Files.exists(catalogue.folder().resolve("workshop/defaults.json")),
                workshop.stages().isEmpty() ? "" : workshop.stages().get(0).name(),
                workshop.subSystems().isEmpty() ? "" : workshop.subSystems().get(0),
                workshop.suppliers().keySet().stream().findFirst().orElse(""),
                workshop.aisles().isEmpty() ? "A" : workshop.aisles().get(0),
                known.parts().size());
    }

    private static Outcome<SortedMap<String, String>> fault(String found, String expected, String advice) {
        return Outcome.faulty(Fault.of("", found, expected, advice));
    }
}
