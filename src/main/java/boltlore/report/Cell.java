package boltlore.report;

import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;

/** What stands in one cell. */
public sealed interface Cell {

    Cell EMPTY = new Empty();

    record Empty() implements Cell {
        @Override
        public <R> R as(Cases<R> cases) {
            return cases.empty();
        }
    }

    record Words(String text) implements Cell {
        @Override
        public <R> R as(Cases<R> cases) {
            return cases.words(text);
        }
    }

    /**
     * A name of the catalogue, which a report says in its language when it is built.
     *
     * @param within English words around it, in which it stands at {0}
     */
    record Said(Wording name, String within) implements Cell {

        /** With the words around it as they are in a language. */
        String in(String language, String around) {
            return around.replace("{0}", name.in(language));
        }

        @Override
        public <R> R as(Cases<R> cases) {
            return cases.words(in(Wording.ENGLISH, within));
        }
    }

    record Figure(BigDecimal value) implements Cell {
        @Override
        public <R> R as(Cases<R> cases) {
            return cases.figure(value);
        }
    }

    record Day(LocalDate value) implements Cell {
        @Override
        public <R> R as(Cases<R> cases) {
            return cases.day(value);
        }
    }

    /** Worked out live by a program that can; every other reader takes the result. */
    record Worked(Formula formula, BigDecimal result) implements Cell {
        @Override
        public <R> R as(Cases<R> cases) {
            return cases.worked(formula, result);
        }
    }

    /** Text; empty text is an empty cell. */
    static Cell of(String text) {
        return text.isEmpty() ? EMPTY : new Words(text);
    }

    /** A name in the language of the report that it comes to stand on. */
    static Cell of(Wording name) {
        return of(name, "{0}");
    }

    /**
     * A name among words: '{0}, left'.
     *
     * @param within English words in which it stands at {0}
     */
    static Cell of(Wording name, String within) {
        return name.english().isEmpty() ? EMPTY : new Said(name, within);
    }

    static Cell of(BigDecimal number) {
        return new Figure(number);
    }

    static Cell of(LocalDate day) {
        return new Day(day);
    }

    static Cell of(Formula formula, BigDecimal result) {
        return new Worked(formula, result);
    }

    <R> R as(Cases<R> cases);

    interface Cases<R> {
        R empty();

        R words(String text);

        R figure(BigDecimal value);

        R day(LocalDate value);

        R worked(Formula formula, BigDecimal result);
    }
}
