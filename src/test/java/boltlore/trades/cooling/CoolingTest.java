package boltlore.trades.cooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Cooling;
import boltlore.catalogue.Cooling.Coolant;
import boltlore.catalogue.Cooling.CoolantCircuit;
import boltlore.catalogue.Cooling.Fitted;
import boltlore.catalogue.Cooling.Fittings;
import boltlore.catalogue.Cooling.FlowPoint;
import boltlore.catalogue.Cooling.Hose;
import boltlore.catalogue.Cooling.Passage;
import boltlore.catalogue.Driving.DriveUnit;
import boltlore.demo.Demo;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.report.Approved;
import boltlore.report.text.TextWriter;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.cooling.CircuitFlow.LaidHose;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Cooling")
class CoolingTest {

    private static final int WIDE = 200;

    private static BigDecimal number(String text) {
        return new BigDecimal(text);
    }

    private static Coolant fluid(String density, String viscosity, String heat) {
        return new Coolant("fluid", "Fluid", number(density), number(viscosity), number(heat), number("40"), "");
    }

    private static FlowPoint point(String litres, String kpa) {
        return new FlowPoint(number(litres), number(kpa));
    }

    /** A pump of 50 kPa that falls to nothing at 20 l/min, and a passage of 25 kPa at 10 l/min: they meet at 10 l/min. */
    private static CircuitFlow flow(String leastFlow, String heat, String most) {
        return new CircuitFlow(
                new CoolantCircuit(
                        "motor",
                        "Motor circuit",
                        Condition.ALWAYS,
                        "fluid",
                        List.of(point("0", "50"), point("20", "0")),
                        BigDecimal.ZERO,
                        List.of(),
                        List.of(),
                        List.of(new Passage("the drive unit", point("10", "25"), number(leastFlow), number("1.5"))),
                        null,
                        null,
                        BigDecimal.valueOf(100),
                        BigDecimal.valueOf(40),
                        number(most),
                        new Fitted(
                                new PositionName("motor-pump"),
                                new PartNumber("CO-P2"),
                                new PositionName("motor-coolant"),
                                number("0.6"),
                                List.of()),
                        ""),
                fluid("1000", "1", "4000"),
                List.of(),
                Heat.lasting(Double.parseDouble(heat)));
    }

    /** The demo's motor circuit, with hoses and elbows reckoned with those bores. */
    private static List<String> bores(String hose, String elbows) {
        CoolantCircuit plain = flow("5", "1000", "60").circuit();
        CoolantCircuit circuit = new CoolantCircuit(
                plain.name(),
                plain.says(),
                plain.when(),
                plain.coolant(),
                plain.pump(),
                plain.roughnessMm(),
                List.of(new Hose(new PositionName("motor-hose-feed"), number(hose))),
                List.of(new Fittings("Elbows", number(elbows), BigDecimal.ONE, 3)),
                plain.passages(),
                plain.heatWatts(),
                null,
                plain.radiatorWattsPerKelvin(),
                plain.airC(),
                plain.mostC(),
                plain.fitted(),
                "");
        return Bores.findings(circuit, Demo.kit("bl-1001").bill().items()).stream()
                .map(Finding::says)
                .toList();
    }

    @Test
    void a_circuit_is_reckoned_with_the_bores_of_the_kits_own_ports() {
        assertThat(bores("25", "25.0")).isEmpty();
        assertThat(bores("19", "25"))
                .singleElement()
                .asString()
                .startsWith("Motor circuit: reckoned with 19 mm at ")
                .contains("has ports of 25 mm");
        assertThat(bores("25", "16"))
                .containsExactly(
                        "Motor circuit: Elbows are reckoned with 16 mm, and the circuit's hoses have ports of 25"
                                + " mm. Correct driving.json.");
    }

    private static TradeResult worked(KitInWork kit) {
        Outcome<List<TradeResult>> outcome = new CoolingTrade().work(List.of(kit), Given.NONE);
        return ((Outcome.Sound<List<TradeResult>>) outcome).value().get(0);
    }

    private static String text(String order) {
        return new TextWriter(WIDE)
                .text(worked(Demo.kit(order)).sheets().get(0).report().get());
    }

    /**
     * White, Fluid Mechanics, worked example of oil in a cast iron pipe (chapter 6, from memory): 900 kg/m³, 1E-5 m²/s,
     * 0.2 m³/s through 500 m of 200 mm with 0.26 mm roughness: Re 128 000, f 0.0225, 117 m of head.
     */
    @Test
    void a_rough_pipe_loses_what_a_published_example_says() {
        PipeFlow pipe = new PipeFlow(fluid("900", "9", "2000"), 200, 0.26);
        assertThat(pipe.reynolds(12_000)).isCloseTo(127_324, within(1.0));
        assertThat(pipe.friction(128_000)).isCloseTo(0.0225, within(0.0003));
        assertThat(pipe.hoseKpa(500_000, 12_000) / 0.9 / 9.81).isCloseTo(117, within(2.0));
    }

    /** Blasius, f = 0.316 / Re^0.25 for smooth pipes to 1E5: another formula of the same textbooks. */
    @Test
    void a_smooth_hose_agrees_with_the_formula_of_blasius() {
        PipeFlow smooth = new PipeFlow(fluid("1045", "1.7", "3500"), 19, 0);
        for (double reynolds : new double[] {5_000, 20_000, 100_000}) {
            double blasius = 0.316 / StrictMath.pow(reynolds, 0.25);
            assertThat(smooth.friction(reynolds)).isCloseTo(blasius, within(0.035 * blasius));
        }
    }

    /** Hagen and Poiseuille: Δp = 128 μ L Q / (π d⁴); at 1 l/min in 16 mm with 3.2 mPa s, Re 441. */
    @Test
    void a_slow_flow_is_laminar() {
        PipeFlow pipe = new PipeFlow(fluid("1063", "3.2", "3370"), 16, 0.01);
        double flow = 1 / 60_000.0;
        double pascal = 128 * 0.0032 * 2 * flow / (StrictMath.PI * StrictMath.pow(0.016, 4));
        assertThat(pipe.reynolds(1)).isLessThan(PipeFlow.LAMINAR);
        assertThat(pipe.hoseKpa(2000, 1)).isCloseTo(pascal / 1000, within(1e-9));
        assertThat(pipe.hoseKpa(2000, 0)).isZero();
    }

    /** Worked by hand: 10 l/min in 16 mm flow at 0.8289 m/s; 1.5 × 1000 × 0.8289² / 2 = 515 Pa. */
    @Test
    void a_fitting_loses_its_share_of_the_dynamic_pressure() {
        assertThat(new PipeFlow(fluid("1000", "1", "4000"), 16, 0).fittingKpa(1.5, 10))
                .isCloseTo(0.5153, within(0.0001));
    }

    @Test
    void the_flow_is_where_the_pump_lifts_what_the_circuit_takes() {
        assertThat(flow("5", "100", "90").litresPerMin()).isCloseTo(10, within(1e-6));
    }

    @Test
    void hoses_fittings_and_passages_add_up() {
        CircuitFlow plain = flow("5", "100", "90");
        CoolantCircuit more = new CoolantCircuit(
                "motor",
                "Motor circuit",
                Condition.ALWAYS,
                "fluid",
                plain.circuit().pump(),
                BigDecimal.ZERO,
                List.of(),
                List.of(new Fittings("Elbows", number("16"), number("0.5"), 3)),
                plain.circuit().passages(),
                null,
                null,
                BigDecimal.TEN,
                BigDecimal.TEN,
                BigDecimal.TEN,
                Fitted.NONE,
                "");
        CircuitFlow whole =
                new CircuitFlow(more, plain.coolant(), List.of(new LaidHose("Hose", 2000, 16)), plain.heat());
        double hose = new PipeFlow(plain.coolant(), 16, 0).hoseKpa(2000, 10);
        assertThat(whole.circuitKpa(10)).isCloseTo(25 + 0.5153 + hose, within(0.0001));
        assertThat(whole.litresPerMin()).isLessThan(10);
    }

    /** Worked by hand: 10 l/min of 1000 kg/m³ and 4000 J/(kg K) carry 666.7 W/K, so 2000 W warm it by 3 K. */
    @Test
    void heat_warms_the_flow_and_the_radiator_needs_a_difference() {
        CircuitFlow flow = flow("5", "2000", "90");
        assertThat(flow.rise(10)).isCloseTo(3, within(1e-9));
        assertThat(flow.hottest()).isCloseTo(60, within(1e-9));
    }

    @Test
    void a_flow_below_what_the_drive_unit_needs_stops_the_order() {
        assertThat(CoolingTrade.judge(flow("12", "2000", "90")))
                .extracting(Finding::says)
                .containsExactly(
                        "Motor circuit: 10.0 l/min flow, less than the 12 l/min that the drive unit needs. At that"
                                + " flow the pressure drop is 36.0 kPa and the pump pressure 20.0 kPa: a stronger pump, a wider bore or"
                                + " shorter hoses.");
        assertThat(CoolingFinding.COOLANT_FLOW_LOW.severity().name()).isEqualTo("STOP");
        assertThat(CoolingTrade.judge(flow("9.9", "2000", "90"))).isEmpty();
    }

    @Test
    void a_coolant_that_gets_too_hot_is_found() {
        assertThat(CoolingTrade.judge(flow("5", "2000", "59.9")))
                .extracting(found -> found.says("de"))
                .containsExactly(
                        "Motor circuit: Das Kühlmittel erreicht mit 2000 W bei 40 °C Außentemperatur 60,0 °C, mehr"
                                + " als 59,9 °C: größerer Kühler oder stärkerer Lüfter.");
        assertThat(CoolingTrade.judge(flow("5", "2000", "60"))).isEmpty();
    }

    /** The motor circuit, counted with the hoses at those positions. */
    private static List<String> leftOut(String... positions) {
        CoolantCircuit plain = flow("5", "1000", "60").circuit();
        List<Hose> hoses = Stream.of(positions)
                .map(position -> new Hose(new PositionName(position), number("25")))
                .toList();
        CoolantCircuit circuit = new CoolantCircuit(
                plain.name(),
                plain.says(),
                plain.when(),
                plain.coolant(),
                plain.pump(),
                plain.roughnessMm(),
                hoses,
                plain.fittings(),
                plain.passages(),
                null,
                null,
                plain.radiatorWattsPerKelvin(),
                plain.airC(),
                plain.mostC(),
                plain.fitted(),
                "");
        return Bores.leftOut(circuit, Demo.kit("bl-1001")).stream()
                .map(Finding::subject)
                .toList();
    }

    @Test
    void every_hose_that_the_coolant_flows_through_is_counted() {
        assertThat(leftOut("motor-hose-feed", "motor-hose-return", "motor-bypass"))
                .isEmpty();
        assertThat(leftOut("motor-hose-feed", "motor-bypass")).containsExactly("motor-hose-return");
    }

    @Test
    void a_circuit_says_which_flow_something_in_it_needs() {
        CircuitFlow plain = flow("5", "100", "90");
        CoolantCircuit circuit = battery("1100", "1000", "60");
        CoolantCircuit open = new CoolantCircuit(
                circuit.name(),
                circuit.says(),
                circuit.when(),
                circuit.coolant(),
                circuit.pump(),
                circuit.roughnessMm(),
                circuit.hoses(),
                circuit.fittings(),
                List.of(new Passage("Cold plates", point("10", "25"), null, null)),
                circuit.heatWatts(),
                circuit.moduleSpecificHeat(),
                circuit.radiatorWattsPerKelvin(),
                circuit.airC(),
                circuit.mostC(),
                circuit.fitted(),
                "");
        assertThat(CoolingTrade.judge(new CircuitFlow(open, plain.coolant(), List.of(), Heat.lasting(100))))
                .extracting(Finding::kind)
                .containsExactly(CoolingFinding.LEAST_FLOW_NOT_GIVEN);
        assertThat(CoolingTrade.judge(new CircuitFlow(circuit, plain.coolant(), List.of(), Heat.lasting(100))))
                .isEmpty();
    }

    /** A circuit of 170 W/K that cools the battery, with that declared beside it. */
    private static CoolantCircuit battery(@Nullable String heat, @Nullable String specific, String most) {
        CoolantCircuit plain = flow("5", "1000", most).circuit();
        return new CoolantCircuit(
                "battery",
                "Battery circuit",
                plain.when(),
                plain.coolant(),
                plain.pump(),
                plain.roughnessMm(),
                plain.hoses(),
                plain.fittings(),
                plain.passages(),
                heat == null ? null : number(heat),
                specific == null ? null : number(specific),
                number("170"),
                number("35"),
                number(most),
                plain.fitted(),
                "");
    }

    private static CircuitFlow battery(Heat heat, String most) {
        return new CircuitFlow(battery("1100", "1000", most), fluid("1000", "1", "4000"), List.of(), heat);
    }

    /**
     * BL-1001 worked by hand: 200 A through 46 mΩ make 200² × 0.046 = 1840 W (Joule) for 50 kWh / (352 V × 200 A) = 2557 s;
     * 16 modules of 18.6 kg with 1000 J/(kg K) store 297.6 kJ/K, so that 1 − exp(−170 × 2557 / 297600) = 0.768 is reached.
     */
    @Test
    void a_battery_is_warmed_by_its_own_resistance_until_it_is_full() {
        Heat charged = Heat.ofPack(battery(null, "1000", "60"), Demo.kit("bl-1001"))
                .filter(heat -> heat.pack() != null && heat.pack().charging())
                .findFirst()
                .orElseThrow();
        assertThat(charged.watts()).isCloseTo(1840, within(0.5));
        assertThat(charged.share()).isCloseTo(0.768, within(0.001));
        assertThat(Heat.ofPack(battery(null, null, "60"), Demo.kit("bl-1001"))).isEmpty();
    }

    /** Worked by hand: 35 + 1840 × 0.768 / 170 = 43.31 °C. */
    @Test
    void a_battery_that_gets_too_hot_says_by_which_current_and_how_long() {
        Heat heat = new Heat(1840, 0.768, new Heat.OfPack(true, 200, 46, 2557));
        assertThat(CoolingTrade.judge(battery(heat, "43.3")))
                .extracting(Finding::says)
                .containsExactly("Battery circuit: 200 A of direct current while charging for 43 min make 1840 W in the"
                        + " battery's 46 mΩ, and the coolant reaches 43.4 °C at 35 °C outside, more than 43.3 °C: a larger"
                        + " radiator, a stronger fan or less current.");
        assertThat(CoolingTrade.judge(battery(heat, "43.4"))).isEmpty();
    }

    @Test
    void heat_that_is_only_declared_is_looked_at() {
        CircuitFlow flow =
                new CircuitFlow(battery("1100", null, "60"), fluid("1000", "1", "4000"), List.of(), Heat.lasting(1100));
        assertThat(CoolingTrade.judge(flow)).extracting(Finding::kind).containsExactly(CoolingFinding.HEAT_NOT_DERIVED);
        assertThat(CoolingTrade.judge(battery(Heat.lasting(1100), "60"))).isEmpty();
    }

    /** Worked by hand: 100 Nm at 3820 rpm are 40.0 kW; at 90 % a ninth of that is lost. */
    @Test
    void the_drive_unit_loses_what_its_efficiency_leaves_at_its_greatest_power() {
        DriveUnit unit = Demo.catalogue().family("pannier-van").driving().driveUnits().stream()
                .filter(each -> each.part().equals(new PartNumber("DU-60")))
                .findFirst()
                .orElseThrow();
        assertThat(CoolingTrade.lossWatts(unit)).isCloseTo(40_003 / 9.0, within(5.0));
    }

    @Test
    void the_hoses_of_the_kit_itself_are_laid() {
        List<CircuitFlow> left = CoolingTrade.circuits(Demo.kit("bl-1001"), new ArrayList<>());
        assertThat(left.get(0).hoses()).extracting(LaidHose::lengthMm).containsExactly(2780.0, 2930.0, 400.0);
        assertThat(left.get(1).hoses()).hasSize(5);
    }

    @Test
    void a_demo_order_reads_as_a_person_has_approved_it() {
        Approved.check("trades/cooling/bl-1001", text("bl-1001"));
    }

    @Test
    void a_family_that_says_nothing_about_cooling_is_not_judged_and_gets_no_sheet() {
        OrderSketch order = new OrderSketch(new CatalogueSketch().draw());
        TradeResult result = worked(new KitInWork(order.plan(), order.bill(), LocalDate.of(2026, 3, 2)));
        assertThat(result.findings().all()).extracting(Finding::kind).containsExactly(KitFinding.NOT_JUDGED);
        assertThat(result.sheets()).isEmpty();
    }

    @Test
    void cautions_stand_on_the_sheet() {
        assertThat(text("bl-2001").replaceAll("[\\s|]+", " ")).contains("coolant on live parts kills");
    }

    /** Worked by hand: 1 m of 19 mm bore holds π/4 · 0.19² · 10 dm³ = 0.2835 l, with 1.5 l and 0.6 l in the tank 2.3835 l. */
    @Test
    void a_circuit_holds_what_its_hoses_passages_and_tank_hold() {
        CircuitFlow plain = flow("5", "100", "90");
        CircuitFlow hosed = new CircuitFlow(
                plain.circuit(), plain.coolant(), List.of(new LaidHose("Hose", 1000, 19)), plain.heat());
        assertThat(Filled.holdsLitres(hosed)).isCloseTo(2.3835, within(0.0001));
    }

    /** BL-1001 has 3.4 l of concentrate for the motor, at 40 % 8.5 l of coolant; the circuit holds 2.1 l and its hose. */
    @ParameterizedTest
    @CsvSource({"1000, COOLANT_TOO_MUCH", "7400, COOLANT_TOO_MUCH", "7600,", "22500,", "22700, COOLANT_TOO_LITTLE"})
    void the_kits_coolant_fills_the_circuit_and_not_twice(double hoseMm, @Nullable CoolingFinding kind) {
        CircuitFlow plain = flow("5", "100", "90");
        CircuitFlow hosed = new CircuitFlow(
                plain.circuit(), plain.coolant(), List.of(new LaidHose("Hose", hoseMm, 19)), plain.heat());
        assertThat(Filled.findings(hosed, Demo.kit("bl-1001")))
                .extracting(Finding::kind)
                .containsExactlyElementsOf(kind == null ? List.of() : List.of(kind));
    }

    private static List<String> filled(Fitted fitted, String percent) {
        CircuitFlow plain = flow("5", "100", "90");
        CoolantCircuit circuit = new CoolantCircuit(
                "motor",
                "Motor circuit",
                Condition.ALWAYS,
                "fluid",
                plain.circuit().pump(),
                BigDecimal.ZERO,
                List.of(),
                List.of(),
                plain.circuit().passages(),
                null,
                null,
                BigDecimal.TEN,
                BigDecimal.TEN,
                BigDecimal.TEN,
                fitted,
                "");
        Coolant coolant =
                new Coolant("fluid", "Fluid", number("1000"), number("1"), number("4000"), number(percent), "");
        CircuitFlow hosed =
                new CircuitFlow(circuit, coolant, List.of(new LaidHose("Hose", 10_000, 19)), Heat.lasting(100));
        return Filled.findings(hosed, Demo.kit("bl-1001"))
                .map(finding -> finding.kind().code())
                .toList();
    }

    @Test
    void a_circuit_is_reckoned_with_the_pump_and_the_mixture_of_the_kit() {
        PositionName pump = new PositionName("motor-pump");
        PositionName coolant = new PositionName("motor-coolant");
        Fitted right = new Fitted(pump, new PartNumber("CO-P2"), coolant, number("0.6"), List.of());
        assertThat(filled(right, "40")).isEmpty();
        assertThat(filled(right, "50")).containsExactly("coolant mix differs");
        assertThat(filled(new Fitted(pump, new PartNumber("CO-P1"), coolant, number("0.6"), List.of()), "40"))
                .containsExactly("pump of other curve");
        assertThat(filled(with(right, "motor-fan", "CO-FAN2"), "40")).isEmpty();
        assertThat(filled(with(right, "motor-fan", "CO-FAN1"), "40")).containsExactly("figures of other part");
        assertThat(filled(Fitted.NONE, "40")).containsExactly("pump not named", "coolant amount not judged");
    }

    private static Fitted with(Fitted fitted, String position, String part) {
        return new Fitted(
                fitted.pumpAt(),
                fitted.pumpPart(),
                fitted.coolantAt(),
                fitted.tankLitres(),
                List.of(new Cooling.FittedPart(new PositionName(position), new PartNumber(part))));
    }
}
