package boltlore.order.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import boltlore.faults.Fault;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("Slips on an order")
class OrderSlipsTest {

    private static void assertFault(
            String from, String to, int line, String pointer, String found, String expected, String advice) {
        assertThat(PlainOrder.changed(from, to).faults())
                .containsExactly(new Fault("plain.json", line, pointer, found, expected, advice));
    }

    private static void assertSound(String from, String to) {
        assertThat(PlainOrder.changed(from, to).faults()).isEmpty();
    }

    @Nested
    @DisplayName("in its head")
    class Head {

        @Test
        void a_name_that_would_leave_the_folder_of_the_exports() {
            for (String name : List.of("../x", "/etc/x", "..", "a/b", "a\\\\b", ".hidden", "x.")) {
                assertThat(PlainOrder.changed("\"S-1\"", "\"" + name + "\"").faults())
                        .as(name)
                        .extracting(Fault::line, Fault::place, Fault::expected)
                        .containsExactly(
                                tuple(
                                        3,
                                        "/order",
                                        "letters, digits, '-', '_' and '.', neither beginning nor ending with '.',"
                                                + " at most 60 long, and no name that Windows keeps for a device (CON, NUL, COM1 …): it names a folder"));
            }
            assertSound("\"S-1\"", "\"S-1.b_2\"");
        }

        @Test
        void an_unknown_family() {
            assertFault("\"cart\"", "\"card\"", 4, "/family", "'card'", "a family", "Did you mean 'cart'?");
        }

        @Test
        void an_unknown_partner() {
            assertFault(
                    "\"Far Works\"",
                    "\"Far Work\"",
                    6,
                    "/partner",
                    "'Far Work'",
                    "a partner of the workshop",
                    "Did you mean 'Far Works'?");
        }

        @Test
        void a_language_that_the_workshop_does_not_write() {
            assertFault(
                    "\"language\": \"de\"",
                    "\"language\": \"fr\"",
                    7,
                    "/language",
                    "'fr'",
                    "a language of the workshop",
                    "Known: en, de.");
        }

        @Test
        void a_date_that_is_none() {
            assertFault(
                    "\"2026-03-02\"",
                    "\"2026-02-30\"",
                    9,
                    "/placed",
                    "'2026-02-30'",
                    "a date as \"2024-03-31\" (year, month, day)",
                    "There is no such day in the calendar.");
        }

        @Test
        void due_before_it_is_placed() {
            assertFault(
                    "\"2026-05-04\"",
                    "\"2026-03-01\"",
                    10,
                    "/due",
                    "due 2026-03-01",
                    "a day not before 2026-03-02, when it was placed",
                    "Swap the two dates.");
            assertSound("\"2026-05-04\"", "\"2026-03-02\"");
        }

        @Test
        void a_chassis_number_without_a_running_number() {
            assertFault(
                    "\"CT 0207\"",
                    "\"CT 0207x\"",
                    7,
                    "/chassis",
                    "'CT 0207x'",
                    "a chassis number of letters, digits, ' ', '.', '/' and '-' that ends with its running number of at"
                            + " most 9 digits, at most 30 long; of just 17 letters and digits, as ISO 3779 has them: capitals"
                            + " without I, O and Q",
                    "");
            assertSound("\"CT 0207\"", "\"CT-x 123456789\"");
        }

        /** The worked example of a check digit in 49 CFR 565.15 (from memory) keeps the letters of ISO 3779. */
        @Test
        void a_vehicle_identification_number_with_a_letter_that_it_never_has() {
            assertThat(PlainOrder.changed("\"CT 0207\"", "\"1M8GDM9AXKPO42788\"")
                            .faults())
                    .extracting(fault -> fault.place())
                    .containsExactly("/chassis");
            assertSound("\"chassis\": \"CT 0207\"", "\"chassis\": \"1M8GDM9AXKP002788\"");
        }

        @Test
        void a_country_that_goes_by_another_code() {
            assertFault(
                    "\"country\": \"FR\"",
                    "\"country\": \"UK\"",
                    8,
                    "/invoice/country",
                    "'UK'",
                    "the code of a country, of two capital letters (ISO 3166: IE, GB, FR …)",
                    "");
            assertSound("\"country\": \"FR\"", "\"country\": \"GB\"");
        }

        @Test
        void a_term_of_delivery_that_is_none_of_the_eleven() {
            assertThat(PlainOrder.changed("\"DAP\"", "\"DAT\"").faults())
                    .extracting(fault -> fault.found())
                    .containsExactly("'DAT'");
            assertSound("\"DAP\"", "\"DPU\"");
        }

        @Test
        void an_invoice_without_an_address() {
            assertThat(PlainOrder.changed(
                                    "\"name\": \"A. Customer\", \"address\": [\"Row 1\", \"Nowhere\"]",
                                    "\"name\": \"A\"")
                            .faults())
                    .extracting(fault -> fault.found())
                    .containsExactly("no 'address'");
        }

        @Test
        void a_piece_of_time_among_the_choices() {
            assertFault(
                    "\"drive-side\": \"left\"",
                    "\"drive-side\": \"left\", \"placed\": \"from-2028-01-01\"",
                    12,
                    "/choices/placed",
                    "'placed' among the choices",
                    "'placed' of the order itself, which settles it",
                    "Remove it here.");
        }

        @Test
        void an_unknown_key() {
            assertFault(
                    "\"notes\": \"Ring",
                    "\"note\": \"Ring",
                    28,
                    "/note",
                    "the unknown key 'note'",
                    "one of $schema, order, family, donorBuilt, placed, choices, fixed, customer, partner, language, due,"
                            + " rank, leftOut, waived, extra, notes, terms, measured, chassis, consignee, invoice",
                    "Did you mean 'notes'?");
        }
    }

    @Nested
    @DisplayName("in its choices")
    class ChoicesOfIt {

        @Test
        void an_unknown_option() {
            assertFault(
                    "\"drive-side\": \"left\"",
                    "\"driveside\": \"left\"",
                    12,
                    "/choices/driveside",
                    "'driveside'",
                    "an option of family 'cart'",
                    "Did you mean 'drive-side'?");
        }

        @Test
        void an_unknown_value() {
            assertFault(
                    "\"south\"",
                    "\"sauth\"",
                    13,
                    "/choices/market",
                    "'sauth'",
                    "a value of option 'market'",
                    "Did you mean 'south'?");
        }

        @Test
        void a_value_that_is_no_text() {
            assertFault("\"left\"", "true", 12, "/choices/drive-side", "true", "a text in double quotes", "");
        }

        @Test
        void all_of_them_in_one_go() {
            assertThat(PlainOrder.changed(
                                    "\"drive-side\": \"left\"",
                                    "\"drive-side\": \"middle\", \"papers\": \"fr\", \"colours\": \"red\"")
                            .faults())
                    .hasSize(3);
        }

        @Test
        void a_firm_option_without_a_value() {
            assertFault(
                    "[\"colour\", \"era\"]",
                    "[\"colour\", \"papers\"]",
                    17,
                    "/fixed/1",
                    "'papers'",
                    "an option that is chosen",
                    "Choose its value too.");
        }

        @Test
        void an_option_both_firm_and_ranked() {
            assertFault(
                    "[\"inlet\", \"export\"]",
                    "[\"inlet\", \"colour\"]",
                    18,
                    "/rank/1",
                    "'colour', which is fixed",
                    "options that are not fixed",
                    "Remove it here.");
        }

        @Test
        void an_unknown_option_in_the_rank() {
            assertFault(
                    "[\"inlet\", \"export\"]",
                    "[\"inlets\", \"export\"]",
                    18,
                    "/rank/0",
                    "'inlets'",
                    "an option of family 'cart'",
                    "Did you mean 'inlet'?");
        }
    }

    @Nested
    @DisplayName("in what stays out, is waived or comes beside")
    class Rest {

        @Test
        void an_unknown_word_for_brackets() {
            assertFault(
                    "[\"holder-left\"]",
                    "\"undecidet\"",
                    19,
                    "/leftOut",
                    "'undecidet'",
                    "one of all, keep, undecided",
                    "Did you mean 'undecided'?");
        }

        @Test
        void a_line_that_is_no_bracket() {
            assertFault(
                    "[\"holder-left\"]",
                    "[\"motor\"]",
                    19,
                    "/leftOut/0",
                    "'motor'",
                    "a bracket line of the family",
                    "Known: frame, holder-left, holder-right.");
        }

        @Test
        void a_waiver_without_a_name_to_it() {
            assertFault("\"who\": \"M. Fitter\", ", "", 21, "/waived/0", "no 'who'", "the key 'who'", "Add it.");
        }

        @Test
        void a_dimension_that_cannot_be_right() {
            assertFault(
                    "\"sill\": \"1790\"",
                    "\"sill\": \"1900.5\"",
                    29,
                    "/measured/sill",
                    "'1900.5'",
                    "a number from 1700 to 1900, such as \"12.5\", with at most 9 decimals",
                    "");
        }

        @Test
        void a_dimension_that_the_family_does_not_measure() {
            assertFault(
                    "\"sill\": \"1790\"",
                    "\"sil\": \"1790\"",
                    29,
                    "/measured/sil",
                    "'sil'",
                    "a dimension that family 'cart' measures",
                    "Did you mean 'sill'?");
        }

        @Test
        void an_extra_part_that_is_unknown() {
            assertFault(
                    "{\"part\": \"GREASE\"",
                    "{\"part\": \"GREES\"",
                    24,
                    "/extra/0/part",
                    "'GREES'",
                    "a part of the catalogue",
                    "Did you mean 'GREASE'?");
        }

        @Test
        void an_extra_in_another_unit_than_its_part() {
            assertFault(
                    "\"quantity\": \"0.2\"",
                    "\"quantity\": \"0.2\", \"unit\": \"l\"",
                    24,
                    "/extra/0/unit",
                    "'l'",
                    "'kg', the part's own unit",
                    "Leave it out for a part.");
        }

        @Test
        void half_a_tow_bar() {
            assertFault(
                    "\"Tow bar\", \"quantity\": 1",
                    "\"Tow bar\", \"quantity\": \"0.5\"",
                    25,
                    "/extra/1/quantity",
                    "0.5",
                    "a whole number, counted in 'set'",
                    "");
        }

        @Test
        void a_one_off_of_ours_without_a_cost() {
            assertFault(
                    "\"cost\": \"80.00\", ",
                    "",
                    25,
                    "/extra/1",
                    "a one-off of ours without 'cost'",
                    "what one of it costs us",
                    "Add 'cost', \"0\" where it is free.");
        }

        @Test
        void a_mass_for_a_part_that_has_its_own() {
            assertFault(
                    "\"quantity\": \"0.2\"",
                    "\"quantity\": \"0.2\", \"massKg\": \"1\"",
                    24,
                    "/extra/0/massKg",
                    "'massKg' for a part",
                    "only for a one-off: a part has its own",
                    "Leave it out.");
        }

        @Test
        void a_height_without_a_station() {
            assertFault(
                    "\"Tow bar\", ",
                    "\"Tow bar\", \"heightMm\": 300, ",
                    25,
                    "/extra/1/heightMm",
                    "'heightMm' without 'stationMm'",
                    "both, or 'stationMm' alone",
                    "");
        }

        @Test
        void a_station_outside_any_car() {
            assertFault(
                    "\"Tow bar\", ",
                    "\"Tow bar\", \"stationMm\": 20001, ",
                    25,
                    "/extra/1/stationMm",
                    "20001",
                    "a whole number from -20000 to 20000",
                    "");
        }

        @Test
        void an_extra_that_is_both_part_and_one_off_or_neither() {
            assertFault(
                    "{\"says\": \"Radio\", ",
                    "{",
                    26,
                    "/extra/2",
                    "neither 'part' nor 'says'",
                    "either a 'part' or a one-off that 'says' what it is",
                    "");
            assertThat(PlainOrder.changed("{\"says\": \"Radio\"", "{\"part\": \"BOLT\", \"says\": \"Radio\"")
                            .faults())
                    .hasSize(1);
        }
    }

    @Nested
    @DisplayName("in the goods of a one-off")
    class GoodsOfAOneOff {

        private static final String NONE = "\"goods\": {\"none\": true}";
        private static final String TOW_BAR = "/extra/1";

        private void says(String goods, String place, String found) {
            assertThat(PlainOrder.changed(NONE, goods).faults())
                    .extracting(Fault::place, Fault::found)
                    .containsExactly(tuple(TOW_BAR + place, found));
        }

        @Test
        void neither_a_number_nor_none() {
            says("\"goods\": {}", "/goods", "neither 'none' nor 'un'");
        }

        @Test
        void both_a_number_and_none() {
            says("\"massKg\": 4, \"goods\": {\"none\": true, \"un\": \"UN 1950\"}", "/goods", "'none' and 'un'");
        }

        @Test
        void dangerous_goods_without_a_mass() {
            says("\"goods\": {\"un\": \"UN 1950\"}", "", "dangerous goods (UN 1950) without 'massKg'");
            assertSound(NONE, "\"massKg\": 4, \"goods\": {\"un\": \"UN 1950\"}");
        }

        @Test
        void goods_that_weigh_more_than_what_they_are_in() {
            says("\"massKg\": 4, \"goods\": {\"un\": \"UN 1950\", \"netKg\": \"4.1\"}", "", "'netKg' above 'massKg'");
            assertSound(NONE, "\"massKg\": 4, \"goods\": {\"un\": \"UN 1950\", \"netKg\": 4}");
        }

        @Test
        void goods_of_a_part() {
            assertThat(PlainOrder.changed("\"A spare tin.\"", "\"A spare tin.\", " + NONE)
                            .faults())
                    .extracting(Fault::place, Fault::found)
                    .containsExactly(tuple("/extra/0/goods", "'goods' for a part"));
        }
    }

    @Nested
    @DisplayName("in its terms")
    class Terms {

        @Test
        void a_discount_that_leaves_nothing_to_pay() {
            assertFault(
                    "\"discountPercent\": \"2.5\"",
                    "\"discountPercent\": \"100\"",
                    29,
                    "/terms/discountPercent",
                    "'100'",
                    "a number from 0 to 95, such as \"12.5\", with at most 9 decimals",
                    "");
        }

        @Test
        void a_discount_that_adds() {
            assertFault(
                    "\"discountPercent\": \"2.5\"",
                    "\"discountPercent\": \"-2.5\"",
                    29,
                    "/terms/discountPercent",
                    "'-2.5'",
                    "a number from 0 to 95, such as \"12.5\", with at most 9 decimals",
                    "");
        }

        @Test
        void a_currency_that_is_not_in_use() {
            assertFault(
                    "\"currency\": \"GBP\"",
                    "\"currency\": \"GBX\"",
                    29,
                    "/terms/currency",
                    "'GBX'",
                    "a currency that some country pays with today (ISO 4217)",
                    "EUR, GBP and USD are such.");
        }

        @Test
        void but_not_where_only_one_of_them_is_agreed() {
            assertSound("\"discountPercent\": \"2.5\", ", "");
        }
    }
}
