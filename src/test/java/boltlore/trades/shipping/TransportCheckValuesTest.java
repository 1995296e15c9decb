package boltlore.trades.shipping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.catalogue.Consignor;
import boltlore.catalogue.RatedMotor;
import boltlore.catalogue.RatedMotor.Current;
import boltlore.catalogue.ShippedBattery;
import boltlore.catalogue.Wood;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.measure.PartNumber;
import boltlore.report.Kind;
import boltlore.report.Printed;
import boltlore.report.Report;
import boltlore.report.Row;
import boltlore.trades.shipping.UnNumber.Travels;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Transport rules, codes, points and papers agree with published ones")
class TransportCheckValuesTest {

    private static final BigDecimal HEAVY = new BigDecimal("12");

    private static Stream<CheckRow> rows(String... ids) {
        return CheckTable.rows("transport.csv", ids);
    }

    private static ShippedBattery battery(boolean strongCase, boolean smallRun) {
        return new ShippedBattery(new PartNumber("PACK"), strongCase, smallRun, "", null);
    }

    private static List<String> codes(BigDecimal eachKg, int inPackage, ShippedBattery battery) {
        return PackingInstruction.toConsider(eachKg, BigDecimal.valueOf(inPackage), battery).stream()
                .map(PackingInstruction::code)
                .toList();
    }

    private static List<String> list(CheckRow row) {
        return Arrays.asList(row.text("case_in_plain_words").split("; ", -1));
    }

    @Test
    void every_row_of_the_table_is_looked_at() {
        List<String> looked = Stream.of(
                        unNumbers(),
                        ofAKit(),
                        points(),
                        airRules(),
                        netByAir(),
                        smallBands(),
                        packing(),
                        classAndLabel(),
                        testSummary(),
                        roadEntries(),
                        adviser(),
                        wood(),
                        motors(),
                        codes(),
                        passport())
                .flatMap(each -> each)
                .map(row -> row.text("id"))
                .sorted()
                .toList();
        assertThat(looked)
                .isEqualTo(CheckTable.all("transport.csv")
                        .map(row -> row.text("id"))
                        .toList());
    }

    static Stream<CheckRow> unNumbers() {
        return rows("TR-01", "TR-02", "TR-03");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("unNumbers")
    void number_by_how_the_battery_is_sent(CheckRow row) {
        Travels how = Map.of("TR-01", Travels.ALONE, "TR-02", Travels.WITH_EQUIPMENT, "TR-03", Travels.IN_VEHICLE)
                .getOrDefault(row.text("id"), Travels.ALONE);
        assertThat(UnNumber.ofLithiumIon(how).un()).isEqualTo(row.text("expected_un_number"));
    }

    static Stream<CheckRow> ofAKit() {
        return rows("TR-04");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ofAKit")
    void a_kits_battery_travels_alone_and_never_as_a_vehicle(CheckRow row) {
        ShippedKit kit = new ShippedKit().battery("PACK", "20", "3000");
        assertThat(kit.shipment().dangerous())
                .extracting(DangerousGoods::un)
                .containsExactly(row.text("expected_un_number"));
        ShippedKit wrong = new ShippedKit().part(ShippedKit.cells("PACK", "20", "UN 3556", "3000"), "", 1);
        assertThat(wrong.stops()).anySatisfy(says -> assertThat(says).contains("UN 3556", "travels as UN 3480"));
        assertThat(row.text("expected_decision")).startsWith("never UN 3556");
    }

    static Stream<CheckRow> points() {
        return rows("TR-05", "TR-06", "TR-07");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("points")
    void points_of_a_small_load_and_whether_it_is_relieved(CheckRow row) {
        RoadPoints points = RoadPoints.of(UnNumber.LITHIUM_ION, row.number("mass_kg"));
        assertThat(UnNumber.LITHIUM_ION.pointsPerKg()).isEqualByComparingTo(row.number("points_per_kg"));
        assertThat(UnNumber.LITHIUM_ION.category()).isEqualTo(2);
        assertThat(RoadPoints.LIMIT).isEqualByComparingTo(row.number("limit_points"));
        assertThat(points.points()).isCloseTo(row.number("expected_points"), within(row.number("tolerance_abs")));
        assertThat(points.exempt()).isEqualTo(row.text("expected_decision").equals("small-load relief applies"));
    }

    static Stream<CheckRow> airRules() {
        return rows("TR-08", "TR-09", "TR-10");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("airRules")
    void state_of_charge_by_air(CheckRow row) {
        BigDecimal most = row.number("state_of_charge_limit_pct");
        assertThat(AirRules.chargeAllowed(most)).isTrue();
        assertThat(AirRules.chargeAllowed(most.add(BigDecimal.ONE))).isFalse();
        assertThat(AirRules.cargoAircraftOnly(UnNumber.LITHIUM_ION)).isTrue();
        assertThat(AirRules.cargoAircraftOnly(UnNumber.LITHIUM_ION_WITH_EQUIPMENT))
                .isFalse();
        boolean indicated = row.text("note").contains("at most 25 % indicated charge");
        assertThat(!indicated || AirRules.MOST_INDICATED_PERCENT.compareTo(BigDecimal.valueOf(25)) == 0)
                .isTrue();
    }

    static Stream<CheckRow> netByAir() {
        return rows("TR-11");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("netByAir")
    void largest_net_mass_in_a_package_by_air(CheckRow row) {
        BigDecimal most = row.number("mass_kg");
        assertThat(AirRules.needsApproval(most)).isFalse();
        assertThat(AirRules.needsApproval(most.add(new BigDecimal("0.1")))).isTrue();
    }

    static Stream<CheckRow> smallBands() {
        return rows("TR-12");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("smallBands")
    void small_cells_and_batteries(CheckRow row) {
        assertThat(Papers.SMALL_CELL_WH + " Wh per cell, " + Papers.SMALL_BATTERY_WH + " Wh per battery")
                .isEqualTo(row.text("expected_decision"));
    }

    static Stream<CheckRow> packing() {
        return rows("TR-13", "TR-14", "TR-15", "TR-16");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("packing")
    void packing_instructions_to_consider(CheckRow row) {
        String code = row.text("expected_code");
        switch (row.text("id")) {
            case "TR-13" -> {
                assertThat(row.number("mass_kg")).isEqualByComparingTo(PackingInstruction.HEAVY_KG);
                assertThat(codes(HEAVY, 2, battery(true, false))).contains(code);
                assertThat(codes(new BigDecimal("11.9"), 2, battery(true, false)))
                        .doesNotContain(code);
                assertThat(codes(HEAVY, 2, battery(false, false))).doesNotContain(code);
            }
            case "TR-14" -> {
                assertThat(codes(HEAVY, 1, battery(true, false))).contains(code);
                assertThat(codes(HEAVY, 2, battery(true, false))).doesNotContain(code);
            }
            case "TR-15" -> {
                assertThat(codes(HEAVY, 2, battery(true, true))).contains(code);
                assertThat(codes(HEAVY, 2, battery(true, false))).doesNotContain(code);
            }
            default -> {
                assertThat(PackingInstruction.DAMAGED.code()).isEqualTo(code);
                assertThat(PackingInstruction.DAMAGED.says()).contains("never by air");
                assertThat(PackingInstruction.ofDamaged(By.AIR).code()).isEqualTo("forbidden");
            }
        }
    }

    static Stream<CheckRow> classAndLabel() {
        return rows("TR-17");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("classAndLabel")
    void class_and_label(CheckRow row) {
        for (UnNumber un : List.of(UnNumber.LITHIUM_ION, UnNumber.LITHIUM_ION_WITH_EQUIPMENT)) {
            assertThat("class " + un.hazardClass() + ", label " + un.label()).isEqualTo(row.text("expected_code"));
        }
    }

    static Stream<CheckRow> testSummary() {
        return rows("TR-18");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("testSummary")
    void fields_of_the_test_summary(CheckRow row) {
        assertThat(Papers.TEST_SUMMARY).isEqualTo(list(row));
    }

    static Stream<CheckRow> roadEntries() {
        return rows("TR-19");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("roadEntries")
    void entries_of_the_road_document_in_their_order(CheckRow row) {
        assertThat(list(row))
                .containsExactly(
                        "UN number",
                        "proper shipping name",
                        "class (label)",
                        "number and kind of packages",
                        "quantity",
                        "consignor",
                        "consignee",
                        "tunnel code where due");
        Report paper = TransportDocument.compose(
                new ShippedKit().battery("PACK", "20", "3000").shipment());
        assertThat(paper.pages().get(0).tables().findFirst().orElseThrow().rows().stream()
                        .filter(Row::isPlain)
                        .map(each -> Printed.inColumn(Kind.text(), each.cells().get(1)))
                        .toList())
                .containsSubsequence(
                        "UN number, preceded by the letters 'UN'",
                        "Proper shipping name",
                        "Class number (lithium batteries)",
                        "Number and description of the packages",
                        "Total quantity",
                        "Name and address of the consignor",
                        "Name and address of the consignee(s)")
                .contains("Tunnel restriction code");
    }

    static Stream<CheckRow> adviser() {
        return rows("TR-20");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("adviser")
    void who_consigns_dangerous_goods_has_an_adviser(CheckRow row) {
        ShippedKit kit = new ShippedKit().battery("PACK", "20", "3000");
        assertThat(kit.consignor(new Consignor(List.of("Here"), "IE", "1", "")).looks())
                .anySatisfy(says -> assertThat(says).contains("No dangerous-goods safety adviser", "minimal"));
        assertThat(kit.consignor(new Consignor(List.of("Here"), "IE", "1", "Somebody"))
                        .looks())
                .noneSatisfy(says -> assertThat(says).contains("No dangerous-goods safety adviser"));
        assertThat(row.text("expected_decision")).contains("unless the risk is minimal");
    }

    static Stream<CheckRow> wood() {
        return rows("TR-21");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wood")
    void solid_wood_across_borders_is_treated_and_marked(CheckRow row) {
        ShippedKit abroad = new ShippedKit().part("BEAM", "10", 1).to("FR");
        assertThat(abroad.wood(Wood.SOLID, "").stops())
                .anySatisfy(says -> assertThat(says).contains("56 °C", "30 minutes"));
        assertThat(abroad.wood(Wood.SOLID, "IE-1 HT").stops()).isEmpty();
        assertThat(abroad.wood(Wood.SOLID, "IE-1 HT").looks())
                .anySatisfy(says -> assertThat(says).contains("IE-1 HT", "two sides"));
        assertThat(abroad.wood(Wood.PLYWOOD, "").stops()).isEmpty();
        assertThat(abroad.to("IE").wood(Wood.SOLID, "").stops()).isEmpty();
        assertThat(row.text("expected_decision")).startsWith("56 degC in the core for 30 min");
    }

    static Stream<CheckRow> motors() {
        return rows("TR-22", "TR-23", "TR-24", "TR-25");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("motors")
    void code_of_a_motor_by_its_power(CheckRow row) {
        Current current = row.text("case_in_plain_words").startsWith("AC") ? Current.AC : Current.DC;
        RatedMotor motor = new RatedMotor(new PartNumber("MOTOR"), row.number("power_kw"), current);
        assertThat(Tariff.of(motor).code()).isEqualTo(row.text("expected_code"));
    }

    static Stream<CheckRow> codes() {
        return rows("TR-26", "TR-27", "TR-28", "TR-29", "TR-30", "TR-31", "TR-32", "TR-33");
    }

    private static final Map<String, List<Tariff>> BY_ROW = Map.of(
            "TR-26", List.of(Tariff.LITHIUM_ION),
            "TR-27", List.of(Tariff.CONVERTER),
            "TR-28", List.of(Tariff.WIRING_SET),
            "TR-29", List.of(Tariff.VEHICLE_PART),
            "TR-30", List.of(Tariff.CONNECTOR),
            "TR-31", List.of(Tariff.AIR_CONDITIONING, Tariff.COMPRESSOR),
            "TR-32", List.of(Tariff.FASTENER),
            "TR-33", List.of(Tariff.CONTROLLER));

    @ParameterizedTest(name = "{0}")
    @MethodSource("codes")
    void code_by_what_it_is(CheckRow row) {
        List<String> codes = BY_ROW.getOrDefault(row.text("id"), List.of()).stream()
                .map(Tariff::code)
                .toList();
        assertThat(String.join(" or ", codes)).isEqualTo(row.text("expected_code"));
    }

    static Stream<CheckRow> passport() {
        return rows("TR-34");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("passport")
    void battery_passport(CheckRow row) {
        assertThat(row.text("expected_decision")).isEqualTo("from 18 February 2027");
        assertThat(Papers.passportDue(LocalDate.of(2027, 2, 18))).isTrue();
        assertThat(Papers.passportDue(LocalDate.of(2027, 2, 17))).isFalse();
    }
}
