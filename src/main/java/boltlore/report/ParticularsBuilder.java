package boltlore.report;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Writes {@link Particulars} down one by one. */
public final class ParticularsBuilder {

    private final String name;
    private final List<Particular> entries = new ArrayList<>();

    ParticularsBuilder(String name) {
        this.name = name;
    }

    public ParticularsBuilder say(String key, String label, String text) {
        return add(key, label, Kind.text(), Cell.of(text));
    }

    public ParticularsBuilder say(String key, String label, LocalDate day) {
        return add(key, label, Kind.date(), Cell.of(day));
    }

    public ParticularsBuilder say(String key, String label, Kind kind, BigDecimal number) {
        return add(key, label, kind, Cell.of(number));
    }

    public ParticularsBuilder say(String key, String label, Kind kind, Formula formula, BigDecimal result) {
        return add(key, label, kind, Cell.of(formula, result));
    }

    /** A particular that is filled in by hand. */
    public ParticularsBuilder leave(String key, String label) {
        return add(key, label, Kind.blank(), Cell.EMPTY);
    }

    public ParticularsBuilder add(String key, String label, Kind kind, Cell cell) {
        entries.add(new Particular(key, label, kind, cell));
        return this;
    }

    public Particulars build() {
        return new Particulars(name, entries);
    }
}
