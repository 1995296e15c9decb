package boltlore.cli;

import boltlore.bring.BroughtBack;
import boltlore.catalogue.json.EntryPlace;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

/**
 * Faults of an edited catalogue that lies aside, each at the cell of the workbook that it comes from.
 *
 * @param edited paths of the files that are other than in the catalogue
 */
record EditedFaults(Path catalogue, Path aside, BroughtBack back, Set<String> edited) {

    /** Of a fault without a cell the file is named as it lies in the catalogue, where it was not edited with its line. */
    <T> Outcome<T> of(Outcome<T> read) {
        return read.faults().isEmpty()
                ? read
                : Outcome.faulty(
                        read.faults().stream().map(this::placed).distinct().toList());
    }

    private Fault placed(Fault fault) {
        Optional<Fault> cell = JsonFile.read(Path.of(fault.file())) instanceof Outcome.Sound<Json> tree
                ? EntryPlace.at(tree.value(), fault.place())
                        .flatMap(place -> back.cells().at(fault, place))
                : Optional.empty();
        boolean other = edited.stream().noneMatch(path -> Path.of(fault.file()).equals(aside.resolve(path)));
        return cell.orElseGet(() -> new Fault(
                fault.file().replace(aside.toString(), other ? catalogue.toString() : catalogue + " as edited"),
                other ? fault.line() : 0,
                fault.place(),
                fault.found(),
                fault.expected(),
                fault.advice()));
    }
}
