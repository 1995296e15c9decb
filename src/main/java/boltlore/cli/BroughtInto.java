package boltlore.cli;

import boltlore.bring.Known;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Stage;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.catalogue.json.PartlyRead;
import boltlore.checking.Checks;
import boltlore.checking.Remark;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.proof.FamilyProof;
import boltlore.proof.Prover;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The catalogue that a list is brought into: what it knows before, and whether it holds after. */
record BroughtInto(RoomCommand command, Screen screen) {

    private static final Duration LONGEST = Duration.ofSeconds(20);

    /** What stands in the folder; nothing where there is no workshop in it. */
    static Outcome<Known> known(@Nullable Path folder) {
        if (folder == null || !Files.exists(folder.resolve("workshop/workshop.json"))) {
            return Outcome.sound(Known.NOTHING);
        }
        return CatalogueReader.read(folder).then(catalogue -> Outcome.sound(known(catalogue)));
    }

    private static Known known(Catalogue catalogue) {
        return new Known(
                false,
                catalogue.workshop().currency().getCurrencyCode(),
                catalogue.workshop().stages().stream().map(Stage::name).toList(),
                catalogue.workshop().subSystems(),
                catalogue.workshop().suppliers().keySet(),
                catalogue.parts().keySet().stream().map(Object::toString).collect(Collectors.toSet()),
                Set.copyOf(catalogue.families().keySet()),
                Set.of());
    }

    /** Says what was written, whether it can be read, what is doubtful in it, and what every order of it gets. */
    int judge(Path folder, String family, List<Path> written) {
        screen.line("Written into " + folder + ": " + written.size() + " files.");
        Outcome<PartlyRead> read = CatalogueReader.readAsFar(folder);
        return command.done(
                screen,
                read.then(partly -> partly.whole().then(whole -> {
                    List<Remark> remarks = Checks.check(whole);
                    remarks.stream()
                            .collect(Collectors.groupingBy(Remark::check, TreeMap::new, Collectors.counting()))
                            .forEach((check, count) -> screen.line("Check, " + check.written() + ": " + count));
                    return Outcome.sound(prove(folder, whole, whole.family(family)));
                })));
    }

    private int prove(Path folder, Catalogue catalogue, Family family) {
        Deadline until = Deadline.in(LONGEST.toNanos(), System::nanoTime);
        ProofProgress progress = new ProofProgress(command.aside());
        FamilyProof proof = Prover.prove(catalogue, family, ProvedKinds.all(), until, progress.of(family.name()));
        progress.end();
        screen.line(family.name() + ": " + proof.answers().size() + " statements looked at.");
        proof.openDefects()
                .collect(Collectors.groupingBy(
                        defect -> defect.statement().kind().name(), TreeMap::new, Collectors.counting()))
                .forEach((kind, count) -> screen.line("Found, " + kind + ": " + count));
        screen.wrapped(
                0, "'boltlore prove " + family.name() + " --catalogue " + folder + "' and 'boltlore check' say each.");
        return ProofResults.of(catalogue, List.of(proof), List.of()).exit();
    }
}
