package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import java.util.List;

/** The families that a command names, or all. */
final class FamiliesAsked {

    private FamiliesAsked() {}

    static Outcome<List<Family>> find(List<String> names, Catalogue known) {
        List<Fault> unknown = names.stream()
                .filter(name -> !known.families().containsKey(name))
                .map(name -> unknown(name, known))
                .toList();
        List<String> asked = names.isEmpty()
                ? List.copyOf(known.families().keySet())
                : names.stream().distinct().toList();
        return unknown.isEmpty()
                ? Outcome.sound(asked.stream().map(known::family).toList())
                : Outcome.faulty(unknown);
    }

    private static Fault unknown(String name, Catalogue known) {
        String all = "There are: " + String.join(", ", known.families().keySet());
        String advice = Nearest.advice(name, known.families().keySet(), all);
        return Fault.of("", "family '" + name + "'", "a family of the catalogue", advice);
    }
}
