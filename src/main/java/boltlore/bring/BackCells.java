package boltlore.bring;

import boltlore.catalogue.json.EntryPlace;
import boltlore.faults.Fault;
import java.util.List;
import java.util.Optional;

/** Where the entries of a family stand in a workbook that comes back. */
public final class BackCells {

    /** A sheet beside the lines, with what was read of it. */
    record Tab(EntryTable<?> table, TabRows rows) {}

    private final String file;
    private final TabRows lines;
    private final List<Tab> tabs;

    BackCells(String file, TabRows lines, List<Tab> tabs) {
        this.file = file;
        this.lines = lines;
        this.tabs = tabs;
    }

    /**
     * The fault of an edited file as one of the workbook, where its entry stands there.
     *
     * @param fault of a file that nobody has on the disk
     * @param place the entry that it speaks of
     * @return the same fault at the cell; none where the workbook has no such row
     */
    public Optional<Fault> at(Fault fault, EntryPlace place) {
        return cell(place).map(cell -> new Fault(file, 0, cell, fault.found(), fault.expected(), fault.advice()));
    }

    private Optional<String> cell(EntryPlace place) {
        boolean value = place.list().equals("values");
        String name = value ? place.of() + FamilySheet.IS + place.name() : place.name();
        for (Tab tab : tabs) {
            boolean own = tab.table().title().equalsIgnoreCase(value ? "options" : place.list());
            boolean known = place.key().isEmpty()
                    || tab.table().fields().stream()
                            .anyMatch(field -> field.key().equals(place.key()));
            if (own && known && tab.rows().numbers().containsKey(name)) {
                return Optional.of(tab.rows().at(name, tab.table().heading(place.key())));
            }
        }
        boolean line = place.list().equals("lines") || place.list().equals("positions");
        return line && lines.numbers().containsKey(name)
                ? Optional.of(lines.at(name, LineRows.heading(place.key())))
                : Optional.empty();
    }
}
