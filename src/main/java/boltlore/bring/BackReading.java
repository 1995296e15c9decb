package boltlore.bring;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Option;
import boltlore.catalogue.json.EntryEdit;
import boltlore.catalogue.json.EntryEdit.What;
import boltlore.catalogue.json.FamilyEdits;
import boltlore.catalogue.json.KitEdit;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.grid.Sheet;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads all sheets of a family's workbook against what it was written from and against the catalogue as it is now. */
final class BackReading {

    private final OpenedFile opened;
    private final Catalogue catalogue;
    private final WorkbookFamily written;
    private final Family family;
    private final BackNotes notes;
    private final List<BackCells.Tab> tabs = new ArrayList<>();
    private final List<EntryEdit> entries = new ArrayList<>();
    private final List<String> since = new ArrayList<>();
    private Set<String> placesLeft = Set.of();

    private BackReading(String file, OpenedFile opened, Catalogue catalogue, WorkbookFamily written) {
        this.opened = opened;
        this.catalogue = catalogue;
        this.written = written;
        this.family = written.family();
        this.notes = BackNotes.of(file);
    }

    static Outcome<BroughtBack> read(String file, OpenedFile opened, Catalogue catalogue, WorkbookFamily written) {
        Optional<TabRows> lines = TabRows.find(opened.sheets(), LineRows.HEADINGS);
        String headings = String.join("', '", LineRows.HEADINGS);
        return lines.<Outcome<BroughtBack>>map(
                        tab -> Outcome.sound(new BackReading(file, opened, catalogue, written).all(tab)))
                .orElseGet(() -> Outcome.faulty(Fault.of(
                        file,
                        "no sheet with the headings '" + headings + "'",
                        "a workbook that 'parts-list' wrote",
                        "Bring other lists in without --onto.")));
    }

    private BroughtBack all(TabRows lines) {
        EntryTable.of(catalogue, family).forEach(this::entries);
        Map<String, SortedMap<String, String>> base = written.base().rows(FamilyRows.LINES);
        Map<String, SortedMap<String, String>> known = written.now().rows(FamilyRows.LINES);
        new LineRows(lines, catalogue, base, places(), offered(lines), notes).read();
        Map<String, SortedMap<String, String>> now = new RowMerge(base, known)
                .with(lines.rows(), clash -> clash(lines, LineRows.heading(clash.key()), clash));
        List<KitEdit> edits = new LineEdits(known, now).edits();
        List<KitEdit> theirs = new LineEdits(base, known).edits();
        since.addAll(new FamilyEdits(List.of(), theirs).says(text -> ConditionText.words(text, family)));
        moved(lines, edits);
        otherSheets(lines);
        List<String> gone = gone(lines, known, now);
        BackCells cells = new BackCells(notes.file(), lines, tabs);
        return new BroughtBack(
                family,
                new FamilyEdits(List.copyOf(entries), edits),
                List.copyOf(notes.faults()),
                List.copyOf(notes.untaken()),
                since.stream()
                        .map(says -> "Since the workbook was written: " + says + ".")
                        .toList(),
                gone,
                cells);
    }

    private <R> void entries(EntryTable<R> table) {
        Map<String, SortedMap<String, String>> base = written.base().rows(table.title());
        Map<String, SortedMap<String, String>> known = written.now().rows(table.title());
        EntryRows<R> rows = new EntryRows<>(table, base, notes);
        TabRows tab = rows.read(opened.sheets(), !opened.encoding().isEmpty());
        if (table.what() == What.VALUE) {
            rows.contradictions(tab);
        }
        Map<String, SortedMap<String, String>> now =
                new RowMerge(base, known).with(tab.rows(), clash -> clash(tab, table.heading(clash.key()), clash));
        entries.addAll(rows.edits(known, now));
        since.addAll(
                new FamilyEdits(rows.edits(base, known), List.of()).says(text -> ConditionText.words(text, family)));
        tabs.add(new BackCells.Tab(table, tab));
        if (table.what() == What.POSITION) {
            placesLeft = new HashSet<>(now.keySet());
        }
    }

    private void clash(TabRows tab, String heading, RowMerge.Clash clash) {
        boolean row = clash.key().isEmpty();
        String there =
                clash.there() == null ? "has it no longer" : row ? "has it otherwise" : "says '" + clash.there() + "'";
        String here = clash.here() == null
                ? "'" + clash.row() + "' taken out"
                : row ? "'" + clash.row() + "'" : "'" + clash.here() + "' in '" + clash.row() + "'";
        notes.fault(
                tab.at(clash.row(), heading),
                here + ", where the catalogue " + there + " since the workbook was written",
                "an edit of one of the two",
                "Keep the catalogue's here, or write the workbook anew and edit that.");
    }

    private SortedSet<String> places() {
        SortedSet<String> places = new TreeSet<>(written.now().rows("Positions").keySet());
        entries.stream().filter(entry -> entry.what() == What.POSITION).forEach(entry -> places.add(entry.name()));
        return places;
    }

    /** What lines may be marked with: what there is, and what is new. What is taken out, while its column stands there. */
    private SortedMap<String, SortedSet<String>> offered(TabRows lines) {
        SortedMap<String, SortedSet<String>> offered = new TreeMap<>();
        family.options().forEach(option -> offered.put(option.name().text(), new TreeSet<>(option.valueNames())));
        for (EntryEdit entry : entries) {
            boolean added = entry.kind() == KitEdit.Kind.ADDED && entry.what() == What.VALUE;
            if (added && takesSeveral(entry.of())) {
                String member = Option.Group.member(new OptionName(entry.of()), entry.name())
                        .text();
                offered.put(member, new TreeSet<>(Set.of(Option.YES, Option.NO)));
            } else if (added) {
                offered.computeIfAbsent(entry.of(), any -> new TreeSet<>()).add(entry.name());
            } else if (entry.kind() == KitEdit.Kind.REMOVED) {
                offered.forEach((option, values) -> values.removeIf(value -> (option.equals(entry.of())
                                ? value.equals(entry.name())
                                : entry.what() == What.OPTION && option.equals(entry.name()))
                        && !lines.columns().containsKey(option + FamilySheet.IS + value)));
            }
        }
        return offered;
    }

    private boolean takesSeveral(String option) {
        return family.options().stream()
                        .anyMatch(each -> each.group() != null
                                && each.group().name().text().equals(option))
                || entries.stream()
                        .filter(each ->
                                each.what() == What.OPTION && each.name().equals(option))
                        .anyMatch(each -> each.keys().containsKey("choose")
                                && each.keys().get("choose").to().equals("several"));
    }

    /** A line that goes to another position leaves behind what the workbook does not show. */
    private void moved(TabRows lines, List<KitEdit> edits) {
        for (KitEdit edit : edits) {
            boolean moves = edit.kind() == KitEdit.Kind.REMOVED && lines.rows().containsKey(edit.line());
            if (moves
                    && family.lines()
                            .filter(line -> line.name().text().equals(edit.line()))
                            .anyMatch(BackReading::hasMore)) {
                notes.fault(
                        lines.at(edit.line(), FamilySheet.POSITION),
                        "line '" + edit.line() + "' at another position",
                        "its position " + edit.position() + ", for it has needs, a history or what it holds up",
                        "Move it in the file of its kit.");
            }
        }
    }

    private static boolean hasMore(Line line) {
        return !line.carries().isEmpty()
                || !line.needs().isEmpty()
                || !line.expects().isEmpty()
                || !line.changes().isEmpty();
    }

    private void otherSheets(TabRows lines) {
        List<Sheet> known = new ArrayList<>(List.of(lines.sheet()));
        tabs.forEach(tab -> known.add(tab.rows().sheet()));
        opened.sheets().stream()
                .filter(sheet -> !known.contains(sheet)
                        && !sheet.name().equals(FamilyRows.TITLE)
                        && !sheet.rows().isEmpty()
                        && tabs.stream().noneMatch(tab -> tab.table().title().equals(sheet.name())))
                .forEach(sheet ->
                        notes.untaken("The sheet " + sheet.name(), "", "'parts-list' wrote none of that name"));
    }

    /** Positions that go with their last line; one that has none, or has lines but no row any more, is a fault. */
    private List<String> gone(
            TabRows lines, Map<String, SortedMap<String, String>> known, Map<String, SortedMap<String, String>> now) {
        Set<String> held = new TreeSet<>();
        now.values().forEach(row -> held.add(LineEdits.cell(row, "position")));
        Set<String> before = new TreeSet<>();
        known.values().forEach(row -> before.add(LineEdits.cell(row, "position")));
        TabRows positions = tabs.get(0).rows();
        before.stream()
                .filter(name -> held.contains(name) && !placesLeft.contains(name))
                .forEach(name -> notes.fault(
                        lines.at(lineAt(name, now), FamilySheet.POSITION),
                        "a line of position '" + name + "', which has no row in the sheet Positions any more",
                        "both or none of them",
                        ""));
        placesLeft.stream()
                .filter(name ->
                        !held.contains(name) && !written.now().rows("Positions").containsKey(name))
                .forEach(name -> notes.fault(
                        positions.at(name, FamilySheet.POSITION),
                        "no line of the new position '" + name + "'",
                        "a line at least",
                        ""));
        return before.stream().filter(name -> !held.contains(name)).toList();
    }

    private static String lineAt(String position, Map<String, SortedMap<String, String>> lines) {
        return lines.entrySet().stream()
                .filter(line -> LineEdits.cell(line.getValue(), "position").equals(position))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("");
    }
}
