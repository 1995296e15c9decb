package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What came of writing a folder for each of several orders: one that cannot be written does not keep the others back. */
record EachWritten(List<Path> paths, List<Fault> faults) {

    static <T> EachWritten of(List<T> orders, Function<T, Outcome<List<Path>>> write) {
        List<Path> paths = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (T order : orders) {
            Outcome<List<Path>> outcome = write.apply(order);
            faults.addAll(outcome.faults());
            if (outcome instanceof Outcome.Sound<List<Path>> sound) {
                paths.addAll(sound.value());
            }
        }
        return new EachWritten(List.copyOf(paths), List.copyOf(faults));
    }
}
