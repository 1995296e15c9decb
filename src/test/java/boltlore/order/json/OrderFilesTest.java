package boltlore.order.json;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.choices.Choice;
import boltlore.faults.Fault;
import boltlore.measure.DeliveryTerm;
import boltlore.measure.LineName;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.measure.Party;
import boltlore.order.Extra;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.OrderTerms;
import boltlore.order.Waiver;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("An order file")
class OrderFilesTest {

    private final Catalogue catalogue = PlainOrder.catalogue();
    private final Order plain = PlainOrder.sound(OrderReader.read(PlainOrder.FILE, catalogue));

    private static SortedSet<OptionName> options(String... names) {
        SortedSet<OptionName> options = new TreeSet<>();
        Stream.of(names).map(OptionName::new).forEach(options::add);
        return options;
    }

    @Test
    void says_who_and_when() {
        assertThat(List.of(plain.name(), plain.family(), plain.customer(), plain.partner(), plain.language()))
                .containsExactly("S-1", "cart", "A. Customer", "Far Works", "de");
        assertThat(plain.placed()).isEqualTo(LocalDate.of(2026, 3, 2));
        assertThat(plain.due()).isEqualTo(LocalDate.of(2026, 5, 4));
        assertThat(plain.notes()).isEqualTo("Ring before delivery.");
        assertThat(plain.terms())
                .isEqualTo(new OrderTerms(
                        new BigDecimal("2.5"),
                        Currency.getInstance("GBP"),
                        new DeliveryTerm(DeliveryTerm.Rule.DAP, "Nowhere"),
                        "At once."));
    }

    @Test
    void says_where_crates_and_invoice_go() {
        assertThat(plain.addresses().consignee())
                .isEqualTo(new Party(
                        "A. Customer, yard",
                        List.of("Row 1", "Nowhere"),
                        "IE",
                        "Somebody",
                        "+353 20 915 0101",
                        "a@b.example",
                        "IE0000002XX",
                        "IE0000002XX"));
        assertThat(plain.addresses().invoice()).extracting(Party::country).isEqualTo("FR");
    }

    @Test
    void says_what_is_chosen_and_the_build_date_settles_the_era() {
        assertThat(plain.choices().values().entrySet().stream()
                        .map(entry -> new Choice(entry.getKey(), entry.getValue())))
                .extracting(Choice::toString)
                .containsExactly(
                        "era=middle",
                        "drive-side=left",
                        "market=south",
                        "inlet=one",
                        "colour=grey",
                        "placed=2025-01-01-to-2027-12-31",
                        "chassis=100-to-4999");
        assertThat(plain.settledByDate()).isEqualTo(options("era", "placed", "chassis"));
        assertThat(plain.firm()).isEqualTo(options("colour", "era"));
        assertThat(plain.rank()).containsExactly(new OptionName("inlet"), new OptionName("export"));
    }

    @Test
    void keeps_an_era_that_is_chosen_even_against_the_build_date() {
        Order order = PlainOrder.sound(PlainOrder.changed("\"choices\": {", "\"choices\": {\"era\": \"late\","));
        assertThat(order.choices().value(new OptionName("era"))).contains("late");
        assertThat(order.settledByDate()).isEqualTo(options("placed", "chassis"));
    }

    @Test
    void leaves_the_era_open_without_a_build_date() {
        Order order = PlainOrder.sound(
                PlainOrder.changed("\"donorBuilt\": \"1972-05-01\",", "", "[\"colour\", \"era\"]", "[\"colour\"]"));
        assertThat(order.choices().value(new OptionName("era"))).isEmpty();
        assertThat(order.settledByDate()).isEqualTo(options("placed", "chassis"));
    }

    @Test
    void settles_the_first_and_the_last_day_of_an_era() {
        for (String[] row : new String[][] {
            {"1969-12-31", "early"}, {"1970-01-01", "middle"}, {"1974-12-31", "middle"}, {"1975-01-01", "late"}
        }) {
            Order order = PlainOrder.sound(PlainOrder.changed("1972-05-01", row[0]));
            assertThat(order.choices().value(new OptionName("era"))).contains(row[1]);
        }
    }

    @Test
    void is_in_the_piece_of_time_of_its_date_and_of_its_running_number() {
        for (String[] row : new String[][] {
            {"2024-12-31", "until-2024-12-31"},
            {"2025-01-01", "2025-01-01-to-2027-12-31"},
            {"2027-12-31", "2025-01-01-to-2027-12-31"},
            {"2028-01-01", "from-2028-01-01"}
        }) {
            Order order = PlainOrder.sound(PlainOrder.changed("2026-03-02", row[0], "2026-05-04", "2199-01-01"));
            assertThat(order.choices().value(new OptionName("placed"))).contains(row[1]);
        }
        for (String[] row : new String[][] {
            {"99", "until-99"}, {"CT 0100", "100-to-4999"}, {"A/4999", "100-to-4999"}, {"7-5000", "from-5000"}
        }) {
            Order order = PlainOrder.sound(PlainOrder.changed("CT 0207", row[0]));
            assertThat(order.choices().value(new OptionName("chassis"))).contains(row[1]);
        }
    }

    @Test
    void leaves_open_which_lines_are_in_effect_without_a_date_and_never_takes_today() {
        Order order = PlainOrder.sound(PlainOrder.changed("  \"placed\": \"2026-03-02\",\n", ""));
        assertThat(order.choices().value(new OptionName("placed"))).isEmpty();
        assertThat(PlainOrder.sound(PlainOrder.parse(OrderWriter.write(order)))).isEqualTo(order);
    }

    @Test
    void says_what_stays_out_is_waived_or_comes_beside() {
        SortedSet<LineName> lines = new TreeSet<>(List.of(new LineName("holder-left")));
        assertThat(plain.leftOut()).isEqualTo(new LeftOut.These(lines));
        assertThat(plain.waived())
                .containsExactly(new Waiver(
                        "fitted but not required",
                        "motor",
                        "M. Fitter",
                        LocalDate.of(2026, 3, 3),
                        "Agreed by telephone."));
        assertThat(plain.extra().get(0))
                .isEqualTo(new Extra(
                        new PartNumber("GREASE"), "", new BigDecimal("0.2"), "kg", null, null, false, "A spare tin."));
        assertThat(plain.extra().get(2).suppliedByCustomer()).isTrue();
    }

    @Test
    void is_undecided_where_it_says_nothing_of_brackets() {
        Order order = PlainOrder.sound(PlainOrder.changed("  \"leftOut\": [\"holder-left\"],\n", ""));
        assertThat(order.leftOut()).isEqualTo(new LeftOut.Undecided());
    }

    @Test
    void comes_back_equal_after_writing() {
        for (String leftOut : List.of("[\"holder-left\", \"frame\"]", "\"all\"", "\"keep\"", "\"undecided\"", "[]")) {
            Order order = PlainOrder.sound(PlainOrder.changed("[\"holder-left\"]", leftOut));
            Order back = PlainOrder.sound(PlainOrder.parse(OrderWriter.write(order)));
            assertThat(back).isEqualTo(order);
        }
    }

    @Test
    void is_written_the_same_way_each_time() {
        assertThat(OrderWriter.write(PlainOrder.sound(PlainOrder.parse(OrderWriter.write(plain)))))
                .isEqualTo(OrderWriter.write(plain));
    }

    @Test
    void that_is_missing_is_said_by_its_name() {
        Path gone = Path.of("orders/gone.json");
        assertThat(OrderReader.read(gone, catalogue).faults())
                .containsExactly(Fault.of(gone.toString(), "nothing of that name", "a JSON file", "Check the path."));
    }

    @Test
    @DisplayName("of the worked example reads without a fault and comes back equal after writing")
    void example() throws IOException {
        Catalogue example = PlainOrder.sound(CatalogueReader.read(Path.of("src/test/resources/example/catalog")));
        try (Stream<Path> files = Files.list(Path.of("src/test/resources/example/orders"))) {
            for (Path file : files.sorted().toList()) {
                Order order = PlainOrder.sound(OrderReader.read(file, example));
                byte[] written = OrderWriter.write(order).getBytes(StandardCharsets.UTF_8);
                assertThat(PlainOrder.sound(OrderReader.parse("again", written, example)))
                        .isEqualTo(order);
            }
        }
    }
}
