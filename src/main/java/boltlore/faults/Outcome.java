package boltlore.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Either a sound value or all the faults that stand in its way, in the order of their places. */
public sealed interface Outcome<T> {

    record Sound<T>(T value) implements Outcome<T> {}

    record Faulty<T>(List<Fault> faults) implements Outcome<T> {
        public Faulty {
            if (faults.isEmpty()) {
                throw new IllegalArgumentException("A faulty outcome names at least one fault");
            }
            faults = faults.stream().sorted().distinct().toList();
        }
    }

    static <T> Outcome<T> sound(T value) {
        return new Sound<>(value);
    }

    static <T> Outcome<T> faulty(List<Fault> faults) {
        return new Faulty<>(faults);
    }

    static <T> Outcome<T> faulty(Fault fault) {
        return new Faulty<>(List.of(fault));
    }

    /** All values in their order, or all the faults of all. */
    static <T> Outcome<List<T>> all(List<Outcome<T>> outcomes) {
        List<T> values = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (Outcome<T> outcome : outcomes) {
            faults.addAll(outcome.faults());
            if (outcome instanceof Sound<T> sound) {
                values.add(sound.value());
            }
        }
        return faults.isEmpty() ? sound(List.copyOf(values)) : faulty(faults);
    }

    default <R> Outcome<R> then(Function<? super T, Outcome<R>> next) {
        return this instanceof Sound<T> sound ? next.apply(sound.value()) : new Faulty<>(faults());
    }

    default List<Fault> faults() {
        return List.of();
    }
}
