package boltlore.bring;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Option;
import boltlore.catalogue.Position;
import boltlore.catalogue.json.EntryEdit;
import boltlore.catalogue.json.FamilyEdits;
import boltlore.catalogue.json.KitEdit;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import boltlore.json.JsonOut;
import boltlore.measure.OptionName;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** What somebody has changed in a family's sheet, line by line. */
public final class LineEdits {

    private final String file;
    private final Family family;
    private final Sheet sheet;
    private final int head;
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private final List<Fault> faults = new ArrayList<>();
    private final List<KitEdit> edits = new ArrayList<>();
    private final Set<String> places = new TreeSet<>();
    private final SortedMap<String, SortedSet<String>> offered = new TreeMap<>();
    private final Map<String, Line> lines = new LinkedHashMap<>();
    private final Map<String, String> positionOf = new HashMap<>();

    private LineEdits(String file, Family family, Sheet sheet, int head) {
        this.file = file;
        this.family = family;
        this.sheet = sheet;
        this.head = head;
        Sheet.Line headings = sheet.rows().get(head);
        for (int column = 0; headings != null && column < headings.cells().size(); column++) {
            columns.putIfAbsent(headings.cell(column).text(), column);
        }
        family.options().forEach(option -> offered.put(option.name().text(), new TreeSet<>(option.valueNames())));
        for (Position position : family.positions()) {
            places.add(position.name().text());
            position.lines().forEach(line -> {
                lines.put(line.name().text(), line);
                positionOf.put(line.name().text(), position.name().text());
            });
        }
    }

    /** The edits, or what of the workbook cannot be taken back. */
    public static Outcome<FamilyEdits> read(String file, byte[] bytes, Catalogue catalogue, Family family) {
        return OpenedFile.read(file, bytes, null)
                .then(opened -> opened.sheets().stream()
                        .flatMap(sheet -> sheet.rows().values().stream()
                                .filter(LineEdits::isHead)
                                .map(line -> new LineEdits(file, family, sheet, line.number())))
                        .findFirst()
                        .map(lines -> lines.edits(catalogue, opened.sheets()))
                        .orElseGet(() -> Outcome.faulty(Fault.of(
                                file,
                                "no sheet with the headings '" + FamilySheet.LINE + "', '" + FamilySheet.PART
                                        + "' and '" + FamilySheet.QUANTITY + "'",
                                "a workbook that 'parts-list' wrote",
                                "Bring other lists in without --onto."))));
    }

    private static boolean isHead(Sheet.Line line) {
        List<String> texts = line.cells().stream().map(GridCell::text).toList();
        return texts.containsAll(
                List.of(FamilySheet.LINE, FamilySheet.POSITION, FamilySheet.PART, FamilySheet.QUANTITY));
    }

    private Outcome<FamilyEdits> edits(Catalogue catalogue, List<Sheet> sheets) {
        List<EntryEdit> entries = EntryTable.of(catalogue, family).stream()
                .flatMap(table -> new EntryRows<>(file, table, faults).edits(sheets).stream())
                .toList();
        entries.forEach(entry -> offer(entry, entries));
        columns.keySet().stream()
                .filter(heading -> heading.contains(FamilySheet.IS) && !isValue(heading))
                .forEach(heading -> fault(
                        head, heading, "the heading '" + heading + "'", "an option and value of " + family.name()));
        Set<String> seen = new HashSet<>();
        for (Sheet.Line row : sheet.rows().tailMap(head, false).values()) {
            String name = text(row, FamilySheet.LINE);
            if (name.isEmpty() && text(row, FamilySheet.PART).isEmpty()) {
                continue;
            }
            if (!seen.add(name)) {
                fault(row.number(), FamilySheet.LINE, "line '" + name + "' a second time", "each line once");
            } else {
                row(row, name);
            }
        }
        lines.keySet().stream()
                .filter(name -> !seen.contains(name))
                .forEach(name -> edits.add(KitEdit.removed(positionOf.getOrDefault(name, ""), name)));
        entries.stream()
                .filter(this::isWithoutLine)
                .forEach(entry -> fault(
                        head,
                        FamilySheet.POSITION,
                        "no line of the new position '" + entry.name() + "'",
                        "a line at least"));
        return faults.isEmpty() ? Outcome.sound(new FamilyEdits(entries, List.copyOf(edits))) : Outcome.faulty(faults);
    }

    /** What is new can be named by lines. */
    private void offer(EntryEdit entry, List<EntryEdit> entries) {
        if (entry.kind() != KitEdit.Kind.ADDED) {
            return;
        }
        if (entry.what() == EntryEdit.What.POSITION) {
            places.add(entry.name());
        } else if (entry.what() == EntryEdit.What.VALUE && takesSeveral(entry.of(), entries)) {
            String member = Option.Group.member(new OptionName(entry.of()), entry.name())
                    .text();
            offered.put(member, new TreeSet<>(Set.of(Option.YES, Option.NO)));
        } else if (entry.what() == EntryEdit.What.VALUE) {
            offered.computeIfAbsent(entry.of(), any -> new TreeSet<>()).add(entry.name());
        }
    }

    private boolean takesSeveral(String option, List<EntryEdit> entries) {
        return family.options().stream()
                        .anyMatch(each -> each.group() != null
                                && each.group().name().text().equals(option))
                || entries.stream()
                        .filter(each -> each.what() == EntryEdit.What.OPTION
                                && each.name().equals(option))
                        .anyMatch(each -> each.keys().containsKey("choose")
                                && each.keys().get("choose").to().equals("several"));
    }

    private boolean isWithoutLine(EntryEdit entry) {
        return entry.what() == EntryEdit.What.POSITION
                && entry.kind() == KitEdit.Kind.ADDED
                && edits.stream().noneMatch(edit -> edit.position().equals(entry.name()));
    }

    private boolean isValue(String heading) {
        return offered.entrySet().stream()
                .anyMatch(option -> option.getValue().stream()
                        .anyMatch(value -> heading.equals(option.getKey() + FamilySheet.IS + value)));
    }

    private String text(Sheet.Line row, String heading) {
        GridCell cell = row.cell(columns.getOrDefault(heading, Integer.MAX_VALUE / 2));
        return cell.kind() == GridCell.Kind.UNREAD ? "" : cell.text();
    }

    private void fault(int row, String heading, String found, String expected) {
        String at = sheet.name() + '!' + Sheet.address(row, columns.getOrDefault(heading, 0));
        faults.add(new Fault(file, 0, at, found, expected, ""));
    }

    private void row(Sheet.Line row, String name) {
        String position = text(row, FamilySheet.POSITION);
        if (!places.contains(position)) {
            fault(
                    row.number(),
                    FamilySheet.POSITION,
                    "position '" + position + "'",
                    "a position of " + family.name() + ". "
                            + Nearest.advice(position, places, "New ones have a row in the sheet Positions."));
            return;
        }
        GridCell cell = row.cell(columns.getOrDefault(FamilySheet.QUANTITY, 0));
        Optional<BigDecimal> quantity = Amount.of(cell, false)
                .or(() -> Amount.of(cell, true))
                .filter(amount -> amount.unit().isEmpty() && amount.number().signum() > 0)
                .map(Amount::number);
        if (quantity.isEmpty()) {
            fault(row.number(), FamilySheet.QUANTITY, "'" + cell.text() + "'", "a number above 0");
            return;
        }
        Optional<JsonOut> when = when(row);
        when.ifPresent(condition -> compare(row, name, position, quantity.get(), condition));
    }

    private void compare(Sheet.Line row, String name, String position, BigDecimal quantity, JsonOut when) {
        String part = text(row, FamilySheet.PART);
        Line known = lines.get(name);
        String now = flat(when);
        if (known == null || !position.equals(positionOf.get(name))) {
            if (known != null) {
                edits.add(KitEdit.removed(positionOf.getOrDefault(name, ""), name));
            }
            edits.add(
                    KitEdit.added(position, name, part, FamilySheet.plain(quantity), now, text(row, FamilySheet.NOTE)));
            return;
        }
        String before = flat(FamilySheet.json(known.when()));
        KitEdit edit = new KitEdit(
                position,
                name,
                KitEdit.change(known.part().text(), part),
                KitEdit.change(FamilySheet.plain(known.quantity()), FamilySheet.plain(quantity)),
                KitEdit.change(before, now),
                columns.containsKey(FamilySheet.NOTE)
                        ? KitEdit.change(known.note(), text(row, FamilySheet.NOTE))
                        : Optional.empty(),
                KitEdit.Kind.CHANGED);
        if (edit.changes()) {
            edits.add(edit);
        }
    }

    static String flat(JsonOut json) {
        return json.written().strip().replaceAll("\\s+", " ").replace("{ ", "{").replace(" }", "}");
    }

    /** The condition that the row's marks say, or the one that stands in words of the catalogue. */
    private Optional<JsonOut> when(Sheet.Line row) {
        Map<String, SortedSet<String>> marks = new TreeMap<>();
        boolean sound = true;
        for (Map.Entry<String, SortedSet<String>> option : offered.entrySet()) {
            SortedSet<String> marked = new TreeSet<>();
            for (String value : option.getValue()) {
                String heading = option.getKey() + FamilySheet.IS + value;
                String mark = text(row, heading);
                if (Words.is(Words.Saying.MARK, mark)) {
                    marked.add(value);
                } else if (!mark.isEmpty() && !Words.is(Words.Saying.BLANK, mark)) {
                    fault(row.number(), heading, "'" + mark + "'", "'x', or nothing");
                    sound = false;
                }
            }
            if (!marked.isEmpty()) {
                marks.put(option.getKey(), marked);
            }
        }
        String otherwise = text(row, FamilySheet.OTHERWISE);
        if (!otherwise.isEmpty() && !marks.isEmpty()) {
            fault(row.number(), FamilySheet.OTHERWISE, "marks and a condition", "one of the two");
            sound = false;
        }
        return !sound
                ? Optional.empty()
                : Optional.of(otherwise.isEmpty() ? FamilySheet.json(marks) : new JsonOut.Plain(otherwise));
    }
}
