package boltlore.cli;

import boltlore.bring.BroughtBack;
import boltlore.catalogue.json.EntryPlace;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import java.nio.file.Path;
import java.util.Optional;

/** Faults of an edited catalogue that lies aside, each at the cell of the workbook that it comes from. */
record EditedFaults(Path catalogue, Path aside, BroughtBack back) {

    /** Of a fault without a cell the file is named as if it lay in the catalogue. */
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
        return cell.orElseGet(() -> new Fault(
                fault.file().replace(aside.toString(), catalogue + " as edited"),
                fault.line(),
                fault.place(),
                fault.found(),
                fault.expected(),
                fault.advice()));
    }
}
