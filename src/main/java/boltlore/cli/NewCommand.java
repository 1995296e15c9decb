package boltlore.cli;

import boltlore.bring.Beginnings;
import boltlore.bring.BegunPart;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.exports.KeptFile;
import boltlore.exports.NewFiles;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.json.CurrencyReading;
import boltlore.json.JsonFile;
import boltlore.json.TextShape;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes small working files to begin with. */
@Command(
        name = "new",
        description =
                "Make a small working start of a workshop, a family, parts, a position or an option. No file that is"
                        + " there is changed but the family's, which takes the option.")
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

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "NAME",
            description = "Of a workshop its folder, else a name; of parts one number or several.")
    private List<String> names = new ArrayList<>();

    @Option(
            names = "--table",
            paramLabel = "FILE",
            description =
                    "Parts as a CSV table, a row each: part, name, cost, massKg, orderCode; beside them quantity, bin"
                            + " and when (option=value).")
    private @Nullable Path table;

    @Option(names = "--family", paramLabel = "FAMILY", description = "The family of a part, position or option.")
    private @Nullable String family;

    @Option(names = "--part", paramLabel = "PART", description = "The part of a position.")
    private @Nullable String part;

    @Option(names = "--currency", paramLabel = "CODE", description = "A workshop's currency; EUR without it.")
    private String currency = "EUR";

    private boolean notWritten;

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        Outcome<List<Path>> written = named().then(any -> written());
        if (!(written instanceof Outcome.Sound<List<Path>> sound)) {
            return refused(written.faults(), notWritten ? Exit.NOT_WRITTEN : Exit.FAULTS);
        }
        sound.value().stream()
                .filter(file -> !file.toString().contains("schema"))
                .forEach(file -> screen.line(file.toString()));
        screen.wrapped(0, next(folder()));
        return Exit.OK;
    }

    private Outcome<Boolean> named() {
        boolean several = what == What.part;
        boolean tabled = several && table != null && names.isEmpty();
        boolean right = tabled || (table == null && (several ? !names.isEmpty() : names.size() == 1));
        return right
                ? Outcome.sound(true)
                : fault(
                        names.isEmpty() ? "no name" : names.size() + " names" + (table == null ? "" : " and --table"),
                        several ? "numbers of parts, or --table with a file" : "one name",
                        "");
    }

    private Path folder() {
        return what == What.workshop ? Path.of(names.get(0)) : catalogue.folder();
    }

    private Outcome<List<Path>> written() {
        if (what == What.option) {
            return shaped().then(any -> CatalogueReader.readAsFar(catalogue.folder()))
                    .then(read -> of(read.rest()))
                    .then(this::option);
        }
        return (what == What.workshop ? workshop() : within()).then(files -> {
            Outcome<List<Path>> written = NewFiles.writeTexts(folder(), files);
            notWritten = !written.faults().isEmpty();
            return written;
        });
    }

    /** Adds it to the family's file, which is otherwise left as it is. */
    private Outcome<List<Path>> option(Family of) {
        String name = names.get(0);
        if (of.option(new OptionName(name)).isPresent()) {
            return fault(
                    "option '" + name + "', which is there already", "a name that no option of the family has", "");
        }
        Path file = catalogue.folder().resolve("families/" + of.name() + "/family.json");
        return JsonFile.bytes(file).then(bytes -> {
            Optional<String> text = Beginnings.withOption(new String(bytes, StandardCharsets.UTF_8), name);
            if (text.isEmpty()) {
                return Outcome.faulty(Fault.of(file.toString(), "no list 'options'", "the family's options", ""));
            }
            try {
                new KeptFile(file)
                        .write(
                                text.get().getBytes(StandardCharsets.UTF_8),
                                time -> file.resolveSibling(time + "-" + file.getFileName()));
                return Outcome.sound(List.of(file));
            } catch (IOException | SecurityException failure) {
                notWritten = true;
                return Outcome.faulty(Fault.of(
                        file.toString(), "a file that cannot be written", "a file that can", "Nothing was changed."));
            }
        });
    }

    private String next(Path folder) {
        return switch (what) {
            case workshop -> "Next: boltlore new family NAME --catalogue " + folder;
            case option ->
                "The option stands behind the others, with the values yes and no. Next: name it in the 'when' of lines;"
                        + " 'boltlore check " + folder + "' tells while nothing does.";
            default ->
                "Next: boltlore check " + folder + ", boltlore prove --catalogue " + folder
                        + ". Change what stands in the files; check --watch tells at each saving what is wrong.";
        };
    }

    private Outcome<SortedMap<String, String>> workshop() {
        String says = String.valueOf(
                Path.of(names.get(0)).toAbsolutePath().normalize().getFileName());
        if (CurrencyReading.known(currency).isEmpty()) {
            return fault("currency '" + currency + "'", CurrencyReading.EXPECTED, CurrencyReading.ADVICE);
        }
        return TextShape.LINE.fits().test(says)
                ? Outcome.sound(Beginnings.workshop(says, currency))
                : fault("a folder named '" + says + "'", TextShape.LINE.says(), "");
    }

    /** Whether all names look as they must; each that does not is told. */
    private Outcome<Boolean> shaped() {
        TextShape shape = what == What.part ? TextShape.PART_NUMBER : TextShape.NAME;
        List<Fault> faults = names.stream()
                .filter(name -> !shape.fits().test(name))
                .map(name -> Fault.of("", "'" + name + "'", shape.says(), ""))
                .toList();
        return faults.isEmpty() ? Outcome.sound(true) : Outcome.faulty(faults);
    }

    private Outcome<SortedMap<String, String>> within() {
        return shaped().then(any -> CatalogueReader.readAsFar(catalogue.folder()))
                .then(read -> files(read.rest()));
    }

    /** The family that is named, or the only one. */
    private Outcome<Family> of(Catalogue known) {
        if (family == null && known.families().size() != 1) {
            return fault(
                    "no --family",
                    "--family with one of the catalogue's: "
                            + String.join(", ", known.families().keySet()),
                    "");
        }
        String of =
                family != null ? family : known.families().keySet().iterator().next();
        return FamiliesAsked.find(List.of(of), known).then(found -> Outcome.sound(found.get(0)));
    }

    private Outcome<SortedMap<String, String>> files(Catalogue known) {
        Beginnings.Place place = place(known);
        if (what == What.family) {
            return Outcome.sound(Beginnings.family(names.get(0), place));
        }
        return of(known)
                .then(of -> what == What.part
                        ? begun(known, of)
                                .then(parts -> parts.isEmpty()
                                        ? fault("a table without a row", "a row a part", "")
                                        : Outcome.sound(Beginnings.parts(parts, of.name(), place)))
                        : position(known, of, place));
    }

    private Outcome<SortedMap<String, String>> position(Catalogue known, Family of, Beginnings.Place place) {
        String expected = "--part with a part of the catalogue";
        if (part == null) {
            return fault("no --part", expected, "A position is for a part: 'new part' makes one with its position.");
        }
        boolean there = TextShape.PART_NUMBER.fits().test(part) && known.parts().containsKey(new PartNumber(part));
        if (!there) {
            List<String> all =
                    known.parts().keySet().stream().map(PartNumber::toString).toList();
            return fault("part '" + part + "'", expected, Nearest.advice(part, all, ""));
        }
        return Outcome.sound(Beginnings.position(names.get(0), part, of.name(), place));
    }

    private Outcome<List<BegunPart>> begun(Catalogue known, Family of) {
        if (table != null) {
            Path file = table;
            return BringCommand.bytes(file).then(bytes -> BegunPart.read(file.toString(), bytes, known, of));
        }
        Set<String> seen = new HashSet<>();
        List<Fault> taken = names.stream()
                .filter(name -> known.parts().containsKey(new PartNumber(name)) || !seen.add(name))
                .map(name ->
                        Fault.of("", "part '" + name + "', which is there already", "a number that no part has", ""))
                .toList();
        return taken.isEmpty()
                ? Outcome.sound(names.stream().map(BegunPart::named).toList())
                : Outcome.faulty(taken);
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

    private static <T> Outcome<T> fault(String found, String expected, String advice) {
        return Outcome.faulty(Fault.of("", found, expected, advice));
    }
}
