package boltlore.bring;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.grid.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;

/**
 * A file of lists as it was read with its mapping, and the mapping as it stands after that: with every doubt in it.
 *
 * @param file the file's name
 * @param notes what is to be known and needs no answer: cells that were not read, rows that were left out, hidden sheets
 * @param into the workshop that it is brought into
 */
public record Brought(String file, Mapping mapping, List<TableRead> tables, List<Doubt> notes, Known into) {

    /** Reads a file; a null mapping is proposed. */
    public static Outcome<Brought> read(String file, byte[] bytes, @Nullable Mapping given, String family, Known into) {
        String encoding = given == null || given.encoding().isEmpty() ? null : given.encoding();
        return OpenedFile.read(file, bytes, encoding).then(opened -> {
            Brought brought = of(opened, given == null ? Mapping.empty(family) : given, into);
            return brought.tables().isEmpty() ? Outcome.faulty(noList(file)) : Outcome.sound(brought);
        });
    }

    private static Fault noList(String file) {
        return Fault.of(
                file,
                "no list of parts in any sheet that is shown",
                "rows of parts under a row of headings, such as part, name, quantity",
                "Check that it is the right file; unhide the sheet that holds the list.");
    }

    /** A mapping from its bytes. */
    public static Outcome<Mapping> mapping(String file, byte[] bytes) {
        return MappingFile.read(file, bytes);
    }

    private static Brought of(OpenedFile opened, Mapping mapping, Known into) {
        List<TableRead> tables = new ArrayList<>();
        List<Doubt> notes = new ArrayList<>();
        for (Sheet sheet : opened.sheets()) {
            if (sheet.rows().isEmpty()) {
                continue;
            }
            if (sheet.hidden()) {
                notes.add(new Doubt(sheet.name(), 0, false, "the sheet is hidden, and not read", ""));
                continue;
            }
            List<TableRead> found = Lists.read(sheet, mapping, opened.commaLikely());
            if (found.isEmpty()) {
                notes.add(new Doubt(sheet.name(), 0, false, "no list of parts is found in the sheet", ""));
            }
            tables.addAll(found);
        }
        return finished(opened, mapping, tables, notes, into);
    }

    private static Brought finished(
            OpenedFile opened, Mapping given, List<TableRead> tables, List<Doubt> notes, Known into) {
        List<Mapping.Tabled> tabled =
                tables.stream().map(read -> tabled(read, given)).toList();
        Map<String, Mapping.Asked> answers = new LinkedHashMap<>();
        given.answers().stream().filter(asked -> !asked.isOpen()).forEach(asked -> answers.put(asked.at(), asked));
        List<Doubt> all = new ArrayList<>(notes);
        encoding(opened, given, all);
        for (int i = 0; i < tables.size(); i++) {
            if (tabled.get(i).read()) {
                all.addAll(tables.get(i).doubts());
            }
        }
        Mapping first = new Mapping(given.family(), given.encoding(), given.missing(), tabled, List.of());
        Draft draft = Draft.of(new Brought(opened.name(), first, tables, List.of(), into), given.given());
        all.addAll(draft.doubts());
        all.stream().filter(doubt -> doubt.open() && !isOfColumn(doubt)).forEach(doubt -> {
            Mapping.Asked asked = new Mapping.Asked(doubt.at(), doubt.says(), doubt.suggests(), Mapping.OPEN);
            if (doubt.says().startsWith(Answers.NOT_UNDERSTOOD)) {
                answers.put(doubt.at(), asked);
            } else {
                answers.putIfAbsent(doubt.at(), asked);
            }
        });
        Mapping whole =
                new Mapping(given.family(), given.encoding(), draft.missing(), tabled, List.copyOf(answers.values()));
        return new Brought(
                opened.name(),
                whole,
                tables,
                all.stream().filter(doubt -> !doubt.open()).toList(),
                into);
    }

    private static void encoding(OpenedFile opened, Mapping given, List<Doubt> notes) {
        if (opened.isMisnamed()) {
            String says = "its name says a workbook, but it is a text: it is read as CSV";
            notes.add(new Doubt(opened.name(), 0, false, says, ""));
        }
        if (!opened.encodingSure() && given.encoding().isEmpty()) {
            String says = "the text is no Unicode; it is read as " + opened.encoding()
                    + ": where letters look wrong, put another under 'encoding'";
            notes.add(new Doubt(opened.name(), 0, false, says, ""));
        }
    }

    /** Doubts of columns stand beside the column. */
    private static boolean isOfColumn(Doubt doubt) {
        return doubt.at().matches(".*![A-Z]+");
    }

    private static Mapping.Tabled tabled(TableRead read, Mapping given) {
        Table table = read.table();
        boolean known = given.of(table).map(Mapping.Tabled::read).orElse(true);
        String head = table.address(table.firstHead(), table.firstColumn());
        List<Mapping.Use> uses = read.columns().stream()
                .map(column -> new Mapping.Use(
                        Sheet.letters(column.at()),
                        column.heading(),
                        column.role(),
                        column.option(),
                        column.value(),
                        !column.sure() && isVital(column),
                        column.because()))
                .toList();
        boolean answered = given.given().at(head).map(Answers.LEAVE_OUT::equals).orElse(false);
        return new Mapping.Tabled(head, known && !answered, uses);
    }

    static boolean isVital(Column column) {
        return List.of(Role.NAME, Role.QUANTITY, Role.VALUE, Role.COST).contains(column.role());
    }

    /** Tables that are brought in. */
    List<TableRead> read() {
        return tables.stream()
                .filter(read ->
                        mapping.of(read.table()).map(Mapping.Tabled::read).orElse(true))
                .toList();
    }

    /**
     * The mapping's text.
     *
     * @param schemas the way from its file to the folder of schemas
     */
    public String mappingText(String schemas) {
        return MappingFile.write(mapping, schemas);
    }

    /** The files of the catalogue, by their path within it; to be written only where nothing is open. */
    public SortedMap<String, String> files() {
        return Draft.of(this, mapping.given()).files();
    }

    /** Rows left out with the reason of each, and how many rows and tables were read. */
    public List<String> left() {
        return read().stream()
                .flatMap(read -> read.left().stream()
                        .map(left -> read.table().sheet().name() + '!' + left.row() + ": " + left.because() + ": "
                                + left.text()))
                .toList();
    }

    /** How many rows name parts. */
    public int rows() {
        return read().stream().mapToInt(read -> read.entries().size()).sum();
    }
}
