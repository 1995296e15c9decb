package boltlore.cli;

import boltlore.bring.FamilySheet;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.faults.Outcome;
import boltlore.report.SheetFile;
import boltlore.report.xlsx.XlsxWriter;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a family as a workbook of lines against options, to be edited and brought back. */
@Command(
        name = "parts-list",
        description =
                "Write a family as a workbook, a row a line and a column for each value of each option. 'bring --onto'"
                        + " takes it back with what was changed in it.")
final class PartsListCommand extends RoomCommand {

    @Parameters(arity = "0..*", paramLabel = "FAMILY", description = "Families; without one all are written.")
    private List<String> families = List.of();

    @Option(names = "--out", paramLabel = "FOLDER", description = "Where to write; without it into exports/parts-list.")
    private Path out = Path.of("exports", "parts-list");

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        return done(
                screen,
                catalogue
                        .read()
                        .then(known -> FamiliesAsked.find(families, known)
                                .then(asked -> Outcome.sound(write(screen, known, asked)))));
    }

    private int write(Screen screen, Catalogue known, List<Family> asked) {
        List<SheetFile> files = asked.stream()
                .flatMap(family -> new XlsxWriter().write(FamilySheet.compose(known, family)).stream())
                .toList();
        Outcome<List<Path>> written = write(out, files);
        if (!written.faults().isEmpty()) {
            return refused(written.faults(), Exit.NOT_WRITTEN);
        }
        written.then(all -> {
            all.forEach(file -> screen.line(file.toString()));
            return Outcome.sound(all);
        });
        return Exit.OK;
    }
}
