package boltlore.report;

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
