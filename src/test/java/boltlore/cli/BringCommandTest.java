package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bring.Brought;
import boltlore.bring.Known;
import boltlore.faults.Outcome;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("boltlore bring")
class BringCommandTest {

    private static final String SOUND = """
            Hay cart;;;;;;;
            Part no;Name;Qty;Unit;Price EUR;Mass kg;Supplier;Order code
            HC-01;Hub motor;2;pcs;88,50;3,2;Tarnholt Drives;TD-1
            HC-03;Cable 2x1.5;3,5;m;1,20;0,09;Tarnholt Drives;TD-3
            """;

    @TempDir
    private Path folder;

    private Path list;
    private Path into;

    @BeforeEach
    void begin() {
        list = folder.resolve("hay-cart.csv");
        into = folder.resolve("catalogue");
    }

    private Ran bring(String text) throws IOException {
        Files.writeString(list, text);
        return boltlore("bring", list, "--into", into);
    }

    @Test
    void a_file_without_a_list_is_refused_and_nothing_is_kept_beside_it() throws IOException {
        Ran ran = bring("Dear Sir,\nthe parts come on Monday.\n");

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("found no list of parts in any sheet that is shown");
        assertThat(folder).isDirectoryContaining(path -> path.equals(list));
        assertThat(folder.resolve("hay-cart.csv.bring.json")).doesNotExist();
        assertThat(into).doesNotExist();
    }

    @Test
    void writes_a_catalogue_that_can_be_read_and_says_what_is_doubtful_in_it() throws IOException {
        Ran ran = bring(SOUND);

        assertThat(ran.out()).contains("2 rows name parts.", "Found, part has no bin location: 2");
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(boltlore("check", into).out()).contains("No errors: 2 parts");
        assertThat(boltlore("parts", "HC-03", "--catalogue", into).out()).contains("Cable 2x1.5");
    }

    @Test
    void keeps_beside_the_list_what_each_column_is() throws IOException {
        bring(SOUND);

        assertThat(folder.resolve("hay-cart.csv.bring.json"))
                .content()
                .contains("\"is\": \"part-number\"", "\"$schema\": \"catalogue/schema/bring.schema.json\"");
    }

    @Nested
    @DisplayName("where something is in doubt")
    class InDoubt {

        private final String doubtful = SOUND.replace(";2;pcs", ";2 or 3;pcs");

        @Test
        void writes_nothing_and_names_the_cell() throws IOException {
            Ran ran = bring(doubtful);

            assertThat(ran.exit()).isEqualTo(Exit.OPEN);
            assertThat(ran.out()).contains("hay-cart!C3: the quantity '2 or 3' is no plain number");
            assertThat(into).doesNotExist();
        }

        @Test
        void goes_on_with_the_answer_in_the_mapping() throws IOException {
            bring(doubtful);
            Path mapping = folder.resolve("hay-cart.csv.bring.json");
            Files.writeString(mapping, Files.readString(mapping).replace("\"is\": \"?\"", "\"is\": \"3\""));

            assertThat(boltlore("bring", list, "--into", into).exit()).isEqualTo(Exit.STOPPED);
            assertThat(into.resolve("families/hay-cart/kit/all.json")).content().contains("\"quantity\": \"3\"");
        }

        @Test
        void tells_programs_the_same() throws IOException {
            Files.writeString(list, doubtful);

            Ran ran = boltlore("bring", list, "--json");

            assertThat(ran.exit()).isEqualTo(Exit.OPEN);
            assertThat(ran.out()).startsWith("[").contains("\"open\": [", "hay-cart!C3");
        }

        @Test
        void says_what_is_wrong_with_a_mapping() throws IOException {
            bring(doubtful);
            Path mapping = folder.resolve("hay-cart.csv.bring.json");
            Files.writeString(mapping, Files.readString(mapping).replace("\"is\": \"name\"", "\"is\": \"nam\""));

            Ran ran = boltlore("bring", list);

            assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
            assertThat(ran.err()).contains("'nam'", "'name'");
        }
    }

    @Test
    void asks_in_the_terminal_and_reads_anew_with_each_answer() throws IOException {
        Files.writeString(list, SOUND.replace(";2;pcs", ";2 or 3;pcs").replace(";3,5;m", ";;m"));
        Brought brought = ((Outcome.Sound<Brought>)
                        Brought.read(list.toString(), Files.readAllBytes(list), null, "hay-cart", Known.NOTHING))
                .value();
        StringWriter shown = new StringWriter();
        Screen screen = new Screen(new PrintWriter(shown));

        Brought answered = new BringTalk(
                        screen, new BufferedReader(new StringReader("3\n\n")), list, Outcome.sound(Known.NOTHING))
                .ask(brought);

        assertThat(brought.mapping().open()).hasSize(2);
        assertThat(answered.mapping().open()).singleElement().asString().contains("'Cable 2x1.5' has no quantity");
        screen.flush();
        assertThat(shown.toString()).contains("the quantity '2 or 3' is no plain number");
    }

    @Test
    void says_that_a_spreadsheet_is_not_there() {
        Ran ran = boltlore("bring", folder.resolve("none.xlsx"));

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("nothing of that name; expected a spreadsheet");
    }

    @Test
    void never_writes_over_a_file() throws IOException {
        bring(SOUND);
        String before = Files.readString(into.resolve("parts/hay-cart.json"));

        Ran ran = bring(SOUND.replace("Hub motor", "Other motor"));

        assertThat(ran.exit()).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(into.resolve("parts/hay-cart.json")).hasContent(before);
    }

    @Test
    void adds_a_family_to_a_workshop_that_is_there_and_tells_a_supplier_that_it_does_not_know() throws IOException {
        boltlore("new", "workshop", into);

        Ran ran = bring(SOUND);

        assertThat(ran.out()).contains("supplier 'Tarnholt Drives': the workshop does not know it");
        assertThat(into.resolve("families/hay-cart/family.json")).exists();
    }

    @Test
    void asks_about_another_currency_than_the_workshops() throws IOException {
        boltlore("new", "workshop", into, "--currency", "GBP");

        Ran ran = bring(SOUND);

        assertThat(ran.exit()).isEqualTo(Exit.OPEN);
        assertThat(ran.out()).contains("the list counts in EUR, the workshop in GBP");
    }

    @Nested
    @DisplayName("--onto, with a list that parts-list wrote")
    class Onto {

        private Path workbook;

        @BeforeEach
        void write() {
            boltlore("new", "workshop", into);
            boltlore("new", "family", "lamp-cart", "--catalogue", into);
            boltlore("parts-list", "--catalogue", into, "--out", folder);
            workbook = folder.resolve("lamp-cart-lines.xlsx");
        }

        /** As a person saves the sheet from a spreadsheet program, with some cells changed. */
        private Path saved(List<String> from, List<String> to) throws IOException {
            Path csv = folder.resolve("lamp-cart-lines.csv");
            StringBuilder text = new StringBuilder();
            try (ReadableWorkbook book = new ReadableWorkbook(workbook.toFile());
                    Stream<Row> rows = book.getFirstSheet().openStream()) {
                rows.forEach(row -> {
                    List<String> cells = row.stream()
                            .map(cell -> cell == null ? "" : cell.getRawValue() == null ? "" : cell.getText())
                            .toList();
                    text.append(String.join("\t", cells)).append('\n');
                });
            }
            String changed = text.toString();
            for (int i = 0; i < from.size(); i++) {
                assertThat(changed).contains(from.get(i));
                changed = changed.replace(from.get(i), to.get(i));
            }
            Files.writeString(csv, changed);
            return csv;
        }

        /** Read as a program that knows no Boltlore reads it. */
        @Test
        void each_line_says_why_it_is_in_a_kit_where_one_points_at_it() throws IOException {
            try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(workbook))) {
                List<String> remarks = book.getSheetAt(0).getCellComments().values().stream()
                        .map(comment -> comment.getString().getString())
                        .toList();
                assertThat(remarks)
                        .isNotEmpty()
                        .allMatch(remark -> remark.matches("In (every order|orders with: .+)\\..*"));
            }
        }

        @Test
        void nothing_is_changed_where_nobody_changed_anything() {
            Ran ran = boltlore("bring", workbook, "--onto", into);

            assertThat(ran.out()).contains("Nothing was changed.");
            assertThat(ran.exit()).isEqualTo(Exit.OK);
        }

        @Test
        void a_change_is_told_with_the_kits_that_it_changes_and_nothing_is_written() throws IOException {
            String before = Files.readString(into.resolve("families/lamp-cart/kit/all.json"));

            Ran ran = boltlore("bring", saved(List.of("Bolt\t8"), List.of("Bolt\t6")), "--onto", into);

            assertThat(ran.out())
                    .contains("line lamp-cart-bolt at lamp-cart-bolt: quantity 6 instead of 8")
                    .contains("Nothing was written.");
            assertThat(into.resolve("families/lamp-cart/kit/all.json")).hasContent(before);
        }

        @Test
        void the_edited_catalogue_is_written_into_a_new_folder() throws IOException {
            Path edited = folder.resolve("edited");

            Ran ran = boltlore("bring", saved(List.of("Bolt\t8"), List.of("Bolt\t6")), "--onto", into, "--to", edited);

            assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
            assertThat(edited.resolve("families/lamp-cart/kit/all.json"))
                    .content()
                    .contains("\"part\": \"LAMP-CART-BOLT\", \"quantity\": \"6\"");
            assertThat(boltlore("check", edited).out()).contains("No errors:");
        }

        @Test
        void a_line_is_added_to_a_position_that_was_its_only_line_and_a_note_comes_along() throws IOException {
            Path edited = folder.resolve("edited");
            Path csv = saved(List.of(), List.of());
            String row = Files.readAllLines(csv).stream()
                    .filter(line -> line.contains("LAMP-CART-BOLT"))
                    .findFirst()
                    .orElseThrow();
            String second = row.replace("lamp-cart-bolt\tlamp-cart-bolt", "lamp-cart-bolt\tspare-bolt")
                    .replace("Bolt\t8", "Bolt\t2");
            List<String> heads = Files.readAllLines(csv).stream()
                    .filter(line -> line.contains("Part number"))
                    .map(line -> List.of(line.split("\t", -1)))
                    .findFirst()
                    .orElseThrow();
            String[] cells = java.util.Arrays.copyOf(second.split("\t", -1), heads.size());
            cells[heads.indexOf("Note")] = "in the tool roll";
            String added = java.util.Arrays.stream(cells)
                    .map(cell -> cell == null ? "" : cell)
                    .collect(java.util.stream.Collectors.joining("\t"));
            Files.writeString(csv, Files.readString(csv).replace(row, row + "\n" + added));

            // Two lines where the position takes one: no proof.
            Ran ran = boltlore("bring", csv, "--onto", into, "--to", edited, "--yes");

            assertThat(ran.out()).as(ran.toString()).contains("line spare-bolt at lamp-cart-bolt is new");
            assertThat(edited.resolve("families/lamp-cart/kit/all.json"))
                    .content()
                    .contains("\"line\": \"lamp-cart-bolt\"", "\"line\": \"spare-bolt\"", "in the tool roll");
        }

        @Test
        void a_part_that_is_none_is_a_fault_of_the_edited_catalogue() throws IOException {
            Path csv = saved(List.of("LAMP-CART-BOLT"), List.of("LAMP-CART-BLOT"));

            Ran ran = boltlore("bring", csv, "--onto", into);

            assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
            assertThat(ran.err()).contains("LAMP-CART-BLOT");
        }
    }
}
