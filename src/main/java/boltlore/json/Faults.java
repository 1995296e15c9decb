package boltlore.json;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.util.ArrayList;
import java.util.List;

/** The faults found so far while one input is read. */
public final class Faults {

    private final List<Fault> found = new ArrayList<>();

    public void add(Fault fault) {
        found.add(fault);
    }

    public void addAll(List<Fault> faults) {
        found.addAll(faults);
    }

    public int count() {
        return found.size();
    }

    public boolean none() {
        return found.isEmpty();
    }

    public List<Fault> all() {
        return List.copyOf(found);
    }

    /** The value if nothing is wrong, else all that is. */
    public <T> Outcome<T> orElse(T value) {
        return none() ? Outcome.sound(value) : Outcome.faulty(found);
    }
}
