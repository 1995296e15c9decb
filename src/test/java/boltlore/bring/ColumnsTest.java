package boltlore.bring;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Outcome;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What the columns and rows of a list are taken for")
class ColumnsTest {

    private static Brought read(String text) {
        Outcome<Brought> read =
                Brought.read("list.csv", text.getBytes(StandardCharsets.UTF_8), null, "list", Known.NOTHING);
        assertThat(read.faults()).isEmpty();
        return ((Outcome.Sound<Brought>) read).value();
    }

    private static List<String> names(Brought brought) {
        return brought.tables().stream()
                .flatMap(table -> table.entries().stream())
                .map(Entry::name)
                .toList();
    }

    @Test
    void a_part_whose_words_could_be_headings_is_a_part_where_it_is_counted() {
        Brought brought = read("""
                Group,State,Item,Unit,Qty,Unit price EUR,Notes
                Axle,Required,Bearing,pcs,3,12.8,
                Drive,Required,Part for the shaft,pcs,2,15,
                Lamp,Required,Head lamp,pcs,1,9,
                """);

        assertThat(names(brought)).containsExactly("Bearing", "Part for the shaft", "Head lamp");
        assertThat(brought.mapping().tables()).hasSize(1);
    }

    @Test
    void headings_that_come_again_begin_another_table() {
        Brought brought = read("""
                Item,Unit,Qty
                Bearing,pcs,3
                Part,Unit,Quantity
                Head lamp,pcs,1
                """);

        assertThat(names(brought)).containsExactly("Bearing", "Head lamp");
        assertThat(brought.mapping().tables()).hasSize(2);
    }

    @Test
    void one_column_of_yes_and_no_is_asked_about() {
        Brought brought = read("""
                Part,Quantity,Owned already,Asked for
                Wheel,2,Yes,$0.00
                Spool,1,No,$35.00
                Fan,2,Yes,$0.00
                """);

        assertThat(brought.mapping().open())
                .anySatisfy(asked -> assertThat(asked).contains("list!C").contains("one value is no choice"))
                .noneMatch(asked -> asked.contains("'$0.00'"));
    }

    @Test
    void two_columns_of_marks_are_values_without_asking() {
        Brought brought = read("""
                Part,Quantity,Left hand,Right hand
                Pedal L,1,x,
                Pedal R,1,,x
                Lamp,1,x,x
                """);

        assertThat(brought.mapping().open()).noneMatch(asked -> asked.contains("no choice"));
    }

    @Test
    void numbers_of_parts_are_numbers_though_most_rows_have_none() {
        Brought brought = read("""
                Reference,Quantity,Description,Part Number
                U1,4,Charger circuit,CH4056
                L1,1,Inductor,—
                R1,4,Resistor,—
                C9,2,Capacitor,—
                """);

        assertThat(names(brought)).containsExactly("Charger circuit", "Inductor", "Resistor", "Capacitor");
        assertThat(brought.tables().get(0).columns())
                .filteredOn(column -> column.at() == 3)
                .extracting(Column::role)
                .containsExactly(Role.PART_NUMBER);
    }

    @Test
    void a_dash_is_no_number_that_parts_share() {
        Brought brought = read("""
                Quantity,Description,Part Number,Cost EUR,Mass kg
                4,Charger circuit,CH4056,1,0.1
                1,Inductor,—,1,0.1
                4,Resistor,—,1,0.1
                """);

        assertThat(brought.notes()).extracting(Doubt::says).noneMatch(says -> says.contains("has the number of"));
        assertThat(brought.files().get("parts/list.json")).contains("Inductor", "Resistor");
    }

    @Test
    void what_stands_as_the_number_of_many_names_is_none() {
        Brought brought = read("""
                Part number,Name,Quantity,Cost EUR,Mass kg
                BUY,Spool,1,20,1
                BUY,Bar 20x20,7,8.25,0.3
                BUY,Nut M5,38,0.02,0.001
                FD-1,Leg,2,1,0.1
                """);

        assertThat(brought.notes())
                .extracting(Doubt::says)
                .contains("'BUY' stands as the number of 3 different names: it is taken for none of a part");
        assertThat(brought.files().get("parts/list.json")).contains("Spool", "Bar 20x20", "Nut M5", "\"FD-1\"");
    }

    @Test
    void two_names_of_one_number_are_told_and_stay_one_part() {
        Brought brought = read("""
                Part number,Name,Quantity,Cost EUR,Mass kg
                FD-1,Leg,2,1,0.1
                FD-1,Foot,2,1,0.1
                """);

        assertThat(brought.notes())
                .extracting(Doubt::says)
                .anyMatch(says -> says.startsWith("'Foot' has the number of 'Leg' in row 2"));
    }

    @Test
    void what_a_later_row_says_otherwise_of_one_number_is_told() {
        Brought brought = read("""
                Part number,Name,Quantity,Cost EUR,Mass kg,Supplier
                FD-1,Leg,2,1.50,0.1,Holm
                FD-1,Leg,2,9.9,0.7,Arden
                """);

        assertThat(brought.notes())
                .extracting(Doubt::says)
                .contains(
                        "'Leg' has a cost of 9.9 here and 1.5 in row 2, and is brought in with that",
                        "'Leg' has a mass of 0.7 here and 0.1 in row 2, and is brought in with that",
                        "'Leg' has the supplier Arden here and Holm in row 2, and is brought in with that");
    }

    @Test
    void what_a_later_row_says_alike_or_not_at_all_is_not() {
        Brought brought = read("""
                Part number,Name,Quantity,Cost EUR,Mass kg,Supplier
                FD-1,Leg,2,1.50,0.1,Holm
                FD-1,Leg,2,1.5,,
                """);

        assertThat(brought.notes()).extracting(Doubt::says).noneMatch(says -> says.contains(" here and "));
    }

    @Test
    void a_row_that_says_the_same_as_another_is_asked_about() {
        Brought brought = read("""
                Name,Part number,Qty
                Hub,AB-1,2
                Rim,AB-2,4
                Hub,AB-1,2
                Hub,AB-1,3
                """);

        assertThat(brought.mapping().open())
                .filteredOn(asked -> asked.contains("says the same as row"))
                .singleElement()
                .asString()
                .startsWith("list!A4: the row says the same as row 2");
    }

    @Test
    void rows_of_one_part_for_the_same_orders_are_one_line_with_their_sum() {
        Brought brought = read("""
                Name,Part number,Qty,Note
                Hub,AB-1,2,
                Rim,AB-2,4,left
                Hub,AB-1,3,
                Rim,AB-2,4,right
                """);

        String kit = brought.files().get("families/list/kit/all.json").replaceAll("\\s+", " ");
        assertThat(kit)
                .contains("\"part\": \"AB-1\", \"quantity\": \"5\"")
                .contains("\"quantity\": \"4\", \"note\": \"left\"", "\"quantity\": \"4\", \"note\": \"right\"");
        assertThat(brought.notes())
                .extracting(Doubt::toString)
                .anyMatch(note -> note.contains("list!C4") && note.contains("the two counts are added"));
    }

    private static List<String> roles(Brought brought) {
        return brought.tables().get(0).columns().stream()
                .map(column -> column.role().code())
                .toList();
    }

    @Test
    void part_beside_name_holds_the_numbers_of_the_parts_and_that_is_told() {
        Brought codes = read("""
                Part,Name,Qty
                AB-1,Hub,2
                AB-2,Rim,4
                AB-7,Bolt M8,8
                """);
        Brought numbers = read("""
                Part,Description,Qty
                1001,Hub,2
                1017,Rim,4
                1005,Bolt M8,8
                """);

        assertThat(roles(codes)).containsExactly("part-number", "name", "quantity");
        assertThat(roles(numbers)).containsExactly("part-number", "name", "quantity");
        assertThat(codes.notes()).extracting(Doubt::says).anyMatch(note -> note.contains("'Part' is taken for"));
        assertThat(codes.files().get("parts/list.json")).contains("\"AB-7\"");
    }

    @Test
    void part_beside_size_names_the_parts() {
        Brought brought = read("""
                Part,Size,Qty
                Hub,M8,2
                Rim,M10,4
                Bolt,M8,8
                """);

        assertThat(roles(brought)).startsWith("name");
    }

    @Test
    void reference_is_the_workshops_own_number_where_nobody_sells_by_it() {
        Brought own = read("""
                Référence;Désignation;Quantité
                AB-1;Moyeu;2
                AB-2;Jante;4
                AB-7;Vis longue;8
                """);
        Brought sold = read("""
                Référence;Désignation;Quantité;Fournisseur
                AB-1;Moyeu;2;Deux Roues
                AB-2;Jante;4;Deux Roues
                AB-7;Vis longue;8;Visserie
                """);

        assertThat(roles(own)).startsWith("part-number", "name");
        assertThat(roles(sold)).startsWith("order-code", "name");
    }

    @Test
    void a_price_whose_heading_stands_over_two_columns_is_read_and_one_that_may_not_be_is_asked_about() {
        Brought brought = read("""
                ;;;Price;
                Part number;Name;Qty;each;total
                AB-1;Hub;2;3,50;7,00
                AB-2;Rim;4;5,00;20,00
                AB-7;Bolt;8;0,20;1,60
                """);
        Brought further = read("""
                Kit;;;Price;;
                Part number;Name;Qty;total;each;Tightened to
                AB-1;Hub;2;7,00;3,50;20,5
                AB-2;Rim;4;20,00;5,00;60,5
                AB-7;Bolt;8;1,60;0,20;9,5
                """);

        assertThat(roles(brought)).containsExactly("part-number", "name", "quantity", "cost", "total");
        assertThat(brought.mapping().missing()).doesNotContainKey("cost");
        assertThat(further.mapping().open())
                .anyMatch(asked -> asked.contains("'each' is taken for cost: 'Price' heads a column left of it"));
    }

    @Test
    void headings_in_two_rows_are_read_together() {
        Brought both = read("""
                Teil;;Menge;Preis;
                Nummer;Benennung;;einzeln;gesamt
                AB-1;Nabe;2;3,50;7,00
                AB-2;Felge;4;5,00;20,00
                AB-7;Schraube;8;0,20;1,60
                """);
        Brought breaks = read("""
                Part number;Name;Qty;Price EUR;
                ;;;1-9;10+
                AB-1;Hub;2;3,50;3,20
                AB-2;Rim;4;5,00;4,00
                AB-7;Bolt;8;0,20;0,14
                """);

        assertThat(roles(both)).containsExactly("part-number", "name", "quantity", "cost", "total");
        assertThat(roles(breaks)).startsWith("part-number", "name", "quantity", "cost");
        assertThat(breaks.mapping().missing()).doesNotContainKey("cost");
    }

    @Test
    void a_row_that_is_needed_once_more_adds_its_count_and_one_that_is_not_is_left_out() {
        String text = """
                Name,Part number,Qty
                Hub,AB-1,2
                Rim,AB-2,4
                Hub,AB-1,2
                """;

        assertThat(hubs(text, "yes")).isEqualTo("4");
        assertThat(hubs(text, "leave out")).isEqualTo("2");
    }

    /** How many hubs every order has after that answer. */
    private static String hubs(String text, String answer) {
        Brought asked = read(text);
        Mapping.Open open = asked.mapping().questions().stream()
                .filter(each -> each.asks().contains("says the same"))
                .findFirst()
                .orElseThrow();
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Brought answered = ((Outcome.Sound<Brought>)
                        Brought.read("list.csv", bytes, asked.mapping().answered(open, answer), "list", Known.NOTHING))
                .value();
        assertThat(answered.mapping().open()).noneMatch(each -> each.contains("says the same"));
        String kit = answered.files().get("families/list/kit/all.json").replaceAll("\\s+", " ");
        return kit.replaceFirst(".*\"AB-1\", \"quantity\": \"(\\d+)\".*", "$1");
    }

    private static final String EXTRAS = """
            Part,Quantity,Price EUR,Heater,Tow bar
            Frame,1,140,,
            Heater box,1,260,x,
            Stiffener,2,22,,yes
            Seal,1,2,x,x
            """;

    @Test
    void a_row_that_is_marked_nowhere_is_asked_about_and_not_lost() {
        Brought brought = read(EXTRAS);

        assertThat(brought.mapping().open())
                .anySatisfy(asked -> assertThat(asked).contains("list!D1", "'Frame'", "whichever is chosen (any)"));
        assertThat(brought.files().toString()).contains("\"Frame\"");
    }

    @Test
    void a_row_that_says_no_under_every_value_is_left_out_and_named() {
        Brought brought = read(EXTRAS.replace("Frame,1,140,,", "Frame,1,140,-,no"));

        assertThat(brought.mapping().open()).noneMatch(asked -> asked.contains("'Frame'"));
        assertThat(brought.notes())
                .anySatisfy(note -> assertThat(note.at() + note.says()).contains("list!D2", "'Frame'", "not needed"));
    }

    @Test
    void columns_of_marks_beside_rows_without_any_may_be_extras_and_are_asked_about() {
        assertThat(read(EXTRAS).mapping().open())
                .anySatisfy(asked -> assertThat(asked).contains("list!D", "each by itself"))
                .anySatisfy(asked -> assertThat(asked).contains("list!E", "each by itself"));
        assertThat(read(EXTRAS.replace("140,,", "140,x,x")).mapping().open())
                .noneMatch(asked -> asked.contains("each by itself"));
    }

    @Test
    void an_option_of_one_column_is_chosen_or_not() {
        Brought brought = read("""
                Part,Quantity,Price EUR,Heater
                Frame,1,140,
                Heater box,1,260,x
                """);

        assertThat(brought.files().toString())
                .contains("\"value\": \"heater\"", "\"value\": \"without-heater\"")
                .contains("\"when\": {\"variant\": \"heater\"}");
    }

    @Test
    void a_column_that_is_not_read_is_named() {
        Brought brought = read("""
                Qty,Part,Part no,Price,Per
                100,Rivet,R-02,8.00,100
                4,Tube,R-03,12,1
                """);

        assertThat(brought.notes())
                .anySatisfy(note -> assertThat(note.at() + " " + note.says())
                        .isEqualTo("list!E column 'Per' is not read: its heading is no known word"));
    }

    @Test
    void ticks_of_what_is_ordered_or_done_are_no_values_and_no_packs() {
        for (String heading : List.of("ordered?", "Bestellt", "done", "erledigt", "reçu")) {
            Brought brought = read(
                    "Part,LHD,RHD,Price," + heading + "\nPedal,1,1,90,x\nLink left,1,0,24,\nLink right,0,1,24,x\n");

            assertThat(roles(brought)).as(heading).endsWith("left");
            assertThat(brought.mapping().open()).as(heading).noneMatch(asked -> asked.contains("of a pack"));
        }
    }

    @Test
    void amounts_of_money_under_a_heading_that_says_only_the_currency_are_asked_about() {
        Brought brought = read("Part,Qty,each £\nPlate,1,£120.00\nTray,2,£210.50\n");

        assertThat(roles(brought)).contains("cost");
        assertThat(brought.mapping().open())
                .anySatisfy(asked -> assertThat(asked).contains("list!C"))
                .noneMatch(asked -> asked.contains("missing/currency"));
    }

    @ParameterizedTest
    @CsvSource({"0012, 12, 0100, true", "1, 2, 3, false"})
    void numbers_behind_noughts_are_those_of_parts_and_no_running_ones(
            String first, String second, String third, boolean ofParts) {
        Brought brought = read("Nr,Name,Qty\n" + first + ",Rail,2\n" + second + ",End cap,4\n" + third + ",Foot,4\n");

        assertThat(brought.files().toString().contains("\"part\": \"" + first + "\""))
                .isEqualTo(ofParts);
    }

    @Test
    void a_list_of_tools_beside_the_parts_is_no_note_of_them() {
        Brought brought = read("""
                Part number,Part,Qty,Cost,,Tool,Size
                A1,Rail,2,30,,Spanner,13 mm
                A2,End cap,4,2.5,,Torque wrench,20-100 Nm
                A3,Foot,4,3,,,
                """);

        assertThat(brought.files().toString()).doesNotContain("Spanner").doesNotContain("20-100");
        assertThat(brought.notes()).extracting(Doubt::at).contains("list!F", "list!G");
    }

    @Test
    void masses_in_pounds_are_not_asked_whether_kilograms_or_grams() {
        Brought brought = read("Part,Qty,Mass lb,Price EUR\nMount,1,10,220\nSpacer,4,0.3,9\n");

        assertThat(brought.mapping().open()).noneMatch(asked -> asked.contains("massUnit"));
        // 1 lb = 0.45359237 kg exactly (NIST SP 811, B.8).
        assertThat(brought.files().toString()).contains("4.5359237");
    }

    @Test
    void headings_in_three_rows_are_one_option_with_its_values() {
        Brought brought = read("""
                No,,,Pieces per kit,,,Money,
                No,Name,Drawing,Short,Long,Long high,each EUR,Supplier
                ,,,(SWB),(LWB),(LWB HR),,
                V-1,Motor plate,DWG-11,1,1,1,120.00,Fell Works
                V-2,Battery tray,DWG-12,1,2,2,210.50,Fell Works
                V-3,Roof duct,DWG-14,0,0,1,33.00,Beck Ltd
                """);

        assertThat(brought.tables().get(0).columns().stream()
                        .filter(column -> column.role() == Role.VALUE)
                        .map(column -> column.option() + ": " + column.value()))
                .containsExactly(
                        "Pieces per kit: Short (SWB)",
                        "Pieces per kit: Long (LWB)",
                        "Pieces per kit: Long high (LWB HR)");
    }

    @Test
    void a_row_whose_mark_is_in_doubt_is_not_said_to_be_needless() {
        Brought brought = read(EXTRAS.replace("Frame,1,140,,", "Frame,1,140,not,") + "Hose,1,3,x,\nFuse,1,2,x,\n");

        assertThat(brought.mapping().open())
                .anySatisfy(asked -> assertThat(asked).contains("list!D2", "'not'"));
        assertThat(brought.notes()).noneMatch(note -> note.says().contains("not needed"));
    }
}
