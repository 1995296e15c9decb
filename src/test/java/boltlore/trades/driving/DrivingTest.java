package boltlore.trades.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Driving;
import boltlore.catalogue.Driving.DriveUnit;
import boltlore.catalogue.Driving.Driven;
import boltlore.catalogue.Driving.Energy;
import boltlore.catalogue.Driving.Promise;
import boltlore.catalogue.Driving.RoadLoad;
import boltlore.catalogue.Driving.Torque;
import boltlore.demo.Demo;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.measure.PartNumber;
import boltlore.report.Approved;
import boltlore.report.drawing.Mark;
import boltlore.report.text.TextWriter;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.driving.ConvertedVehicle.Footing;
import boltlore.trades.driving.ConvertedVehicle.Held;
import boltlore.trades.weighing.AxleLoadsTrade;
import boltlore.trades.weighing.LoadCase;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Driving")
class DrivingTest {

    private static final int WIDE = 200;
    private static final BigDecimal ALL = BigDecimal.valueOf(100);

    private static BigDecimal number(String text) {
        return new BigDecimal(text);
    }

    /** Wheels of 300 mm, ten turns of the motor for one of the wheels, no losses, road load as given. */
    private static RoadLoad road(String rolling, String dragArea, String grip) {
        return new RoadLoad(
                Condition.ALWAYS,
                number(dragArea),
                number(rolling),
                BigDecimal.ZERO,
                300,
                BigDecimal.valueOf(4),
                ALL,
                BigDecimal.ONE,
                number(grip),
                Driven.REAR,
                "");
    }

    /** 100 Nm up to 6000 rpm, for hours as for seconds. */
    private static DriveUnit unit() {
        Torque first = new Torque(0, ALL, ALL);
        return new DriveUnit(
                new PartNumber("DU-1"),
                number("2.5"),
                ALL,
                ALL,
                6000,
                null,
                List.of(first, new Torque(6000, ALL, ALL)),
                "");
    }

    /** 1000 kg with f0 = 100 N and f2 = 1 N per (m/s)², 10 kWh, 60 % of the weight on the driven rear axle. */
    private static ConvertedVehicle vehicle(double batteryWatts, String grip, Promise promise) {
        Resistance load = new Resistance(1000, 100, 0, 1);
        return new ConvertedVehicle(
                load,
                load,
                load,
                new Traction(unit(), road("0.0102", "1.6", grip), batteryWatts),
                new Footing(number(grip).doubleValue(), 0.6, 1, 0),
                new Energy(ALL, BigDecimal.valueOf(20), ""),
                10,
                0,
                500,
                promise);
    }

    private static Promise promise(String range, String topSpeed, String gradient) {
        return new Promise(Condition.ALWAYS, number(range), number("36"), number(topSpeed), number(gradient));
    }

    private static List<Finding> judged(double batteryWatts, String grip, Promise promise) {
        return DrivingMaker.judged(vehicle(batteryWatts, grip, promise)).all();
    }

    private static String sheet(String order) {
        return new TextWriter(WIDE)
                .text(worked(Demo.kit(order)).sheets().get(0).report().get());
    }

    private static TradeResult worked(KitInWork kit) {
        Outcome<List<TradeResult>> outcome = new DrivingTrade().work(List.of(kit), Given.NONE);
        return ((Outcome.Sound<List<TradeResult>>) outcome).value().get(0);
    }

    /**
     * NPTEL course 'Fundamentals of electric vehicles', week 2, solution of question 2.1 (air 1.2 kg/m³, 9.81 m/s², 8°): a
     * three-wheeler with 600 kg, cd 0.45, 1.6 m², and a car with 1500 kg, cd 0.3, 2.5 m², rolling 0.015.
     */
    @ParameterizedTest(name = "{0} kg at {2} km/h: air {3} N, rolling {4} N, slope {5} N")
    @DisplayName("Resistance on a slope is that of a published worked example")
    @CsvSource({
        "600,  0.720, 30, 30,     87.43,  819.17",
        "600,  0.720, 80, 213.33, 87.43,  819.17",
        "1500, 0.75,  30, 31.25,  218.57, 2047.93",
        "1500, 0.75,  80, 222.22, 218.57, 2047.93"
    })
    void resistance(double kg, double dragArea, double kmh, double air, double rolling, double slope) {
        Resistance load = new Resistance(kg, kg * 9.81 * 0.015, 0, 1.2 * dragArea / 2);
        double tangent = StrictMath.tan(StrictMath.toRadians(8));
        // The published figures rest on 9.81 m/s², the program on 9.80665.
        assertThat(load.newton(ConvertedVehicle.ms(kmh), tangent)).isCloseTo(air + rolling + slope, within(1.0));
    }

    /**
     * Webtec, 'Gradeability', worked example in metric units: 117 Nm, ratio 12, 400 mm, 4500 kg, good concrete (1.5 %
     * rolling, from memory of the page's table) climbs 6.5 %.
     */
    @Test
    void the_gradient_climbed_is_that_of_a_published_worked_example() {
        Resistance load = new Resistance(4500, 4500 * Resistance.GRAVITY * 0.015, 0, 0);
        assertThat(load.gradient(117 * 12 / 0.4, 0)).isCloseTo(0.065, within(0.0006));
    }

    @Test
    void a_force_that_equals_the_resistance_on_a_gradient_climbs_just_that_gradient() {
        Resistance load = new Resistance(1500, 200, 1, 0.9);
        for (double gradient : new double[] {-0.05, 0, 0.08, 0.3}) {
            assertThat(load.gradient(load.newton(12, gradient), 12)).isCloseTo(gradient, within(1e-12));
        }
    }

    @Test
    void rolling_and_air_come_from_mass_coefficients_and_drag_area() {
        Resistance load = Resistance.of(1000, road("0.01", "1.6", "0.8"));
        // Worked by hand: 1000 kg × 9.80665 m/s² × 0.01; 1.225 kg/m³ × 1.6 m² / 2.
        assertThat(load.f0()).isCloseTo(98.0665, within(1e-9));
        assertThat(load.f2()).isCloseTo(0.98, within(1e-9));
    }

    /** Worked by hand: tan α = μ N/W / (1 − μ h/L) on a driven rear axle, / (1 + μ h/L) on a front one. */
    @Test
    void the_slope_loads_the_rear_axle_so_that_it_grips_more_and_relieves_the_front_one() {
        assertThat(new Footing(0.8, 0.5, 1, 0.25).gradient(0)).isCloseTo(0.4 / 0.8, within(1e-12));
        assertThat(new Footing(0.8, 0.5, -1, 0.25).gradient(0)).isCloseTo(0.4 / 1.2, within(1e-12));
        assertThat(new Footing(0.8, 0.5, 1, 0.25).gradient(0.02)).isCloseTo(0.38 / 0.8, within(1e-12));
    }

    /** Worked by hand: 6000 rpm / 10 = 62.83 rad/s, × 0.3 m = 18.85 m/s = 67.86 km/h; 100 Nm × 10 / 0.3 m = 3333 N. */
    @Test
    void force_and_speed_at_the_wheels_follow_ratio_and_radius() {
        Traction traction = vehicle(1e6, "0.8", promise("1", "1", "1")).traction();
        assertThat(ConvertedVehicle.kmh(traction.fastest())).isCloseTo(67.858, within(0.001));
        assertThat(traction.peakNewton(10)).isCloseTo(3333.33, within(0.01));
        assertThat(traction.peakNewton(traction.fastest() * 1.001)).isZero();
    }

    @Test
    void between_two_points_the_torque_lies_on_a_straight_line() {
        List<Torque> falling = List.of(
                new Torque(0, ALL, ALL),
                new Torque(3000, number("50"), number("50")),
                new Torque(6000, BigDecimal.ZERO, BigDecimal.ZERO));
        DriveUnit unit = new DriveUnit(new PartNumber("DU-1"), number("2.5"), ALL, ALL, 6000, null, falling, "");
        Traction traction = new Traction(unit, road("0.01", "1", "0.8"), 1e6);
        assertThat(traction.peakNewton(traction.fastest() / 4)).isCloseTo(2500, within(1e-6));
    }

    /** Worked by hand: 100 Nm at 3000 rpm are 31.4 kW, as are 50 Nm at 6000; at 4000 rpm that is 75 Nm, the line has 83.3. */
    @Test
    void between_two_points_of_the_same_power_the_power_does_not_rise() {
        BigDecimal half = number("50");
        List<Torque> held =
                List.of(new Torque(0, ALL, half), new Torque(3000, ALL, half), new Torque(6000, half, half));
        DriveUnit unit = new DriveUnit(new PartNumber("DU-1"), number("2.5"), ALL, ALL, 6000, null, held, "");
        Traction traction = new Traction(unit, road("0.01", "1", "0.8"), 1e6);
        assertThat(traction.peakNewton(traction.fastest() * 4 / 6)).isCloseTo(2500, within(1e-6));
        assertThat(traction.peakNewton(traction.fastest() / 4)).isCloseTo(100 * 10 / 0.3, within(1e-6));
        assertThat(traction.continuousNewton(traction.fastest() * 4 / 6)).isCloseTo(50 * 10 / 0.3, within(1e-6));
    }

    /** Ratings of the demo drive units by their data sheets; the torques there are rounded to a tenth of a Nm. */
    @ParameterizedTest(name = "{0}: {1} kW short-time, {2} kW continuous")
    @CsvSource({"DU-45, 45, 30", "DU-60, 60, 40", "DU-90, 90, 55"})
    void no_demo_drive_unit_gives_more_than_its_rating_at_any_speed(String part, double peakKw, double continuousKw) {
        DriveUnit unit = Demo.catalogue().families().values().stream()
                .flatMap(family -> family.driving().driveUnits().stream())
                .filter(each -> each.part().equals(new PartNumber(part)))
                .findFirst()
                .orElseThrow();
        Traction traction = new Traction(unit, road("0.01", "1", "0.8"), 1e6);
        double gear = unit.gearPercent().doubleValue() / 100;
        for (double ms = 0.1; ms < traction.fastest(); ms += 0.1) {
            assertThat(traction.peakNewton(ms) * ms / gear / 1000).isLessThan(peakKw * 1.003);
            assertThat(traction.continuousNewton(ms) * ms / gear / 1000).isLessThan(continuousKw * 1.007);
        }
    }

    @Test
    void the_laden_mass_is_rounded_once_and_the_drive_unit_has_its_name() {
        KitInWork kit = Demo.kit("bl-1001");
        BigDecimal laden = AxleLoadsTrade.weighing(kit)
                .onAxles()
                .in(LoadCase.LADEN)
                .orElseThrow()
                .loads()
                .totalKg();
        assertThat(sheet("bl-1001").replaceAll(" +", " "))
                .contains("Mass, fully laden " + laden.setScale(1, RoundingMode.HALF_UP) + " kg")
                .contains("Drive unit DU-90, ")
                .doesNotContain(".json");
    }

    @Test
    void each_gradient_drawn_has_its_label_once() {
        ConvertedVehicle vehicle = DrivingMaker.make(Demo.kit("bl-1001")).vehicle();
        List<Mark> marks = TractionDrawing.draw(vehicle).marks();
        assertThat(marks)
                .filteredOn(mark -> mark instanceof Mark.Line line && line.dashed())
                .hasSize(4);
        assertThat(marks.toString())
                .containsOnlyOnce("30 %")
                .containsOnlyOnce("20 %")
                .containsOnlyOnce("10 %");
    }

    /** Worked by hand: v³ + 100 v = 5000 W gives 15.155 m/s = 54.56 km/h. */
    @Test
    void the_top_speed_is_where_the_battery_feeds_just_the_resistance() {
        ConvertedVehicle vehicle = vehicle(5000, "0.8", promise("1", "1", "1"));
        assertThat(ConvertedVehicle.kmh(vehicle.topSpeed().figure())).isCloseTo(54.5, within(0.051));
        assertThat(vehicle.topSpeed().by()).isEqualTo(Held.BATTERY);
        assertThat(vehicle(1e6, "0.8", promise("1", "1", "1")).topSpeed().by()).isEqualTo(Held.MOTOR_SPEED);
    }

    /** Worked by hand: without resistance t = m v / F = 1000 kg × 10 m/s / 3333 N = 3 s. */
    @Test
    void the_time_to_a_speed_is_momentum_over_force() {
        Resistance none = new Resistance(1000, 0, 0, 0);
        ConvertedVehicle base = vehicle(1e6, "0.8", promise("1", "1", "1"));
        ConvertedVehicle vehicle =
                new ConvertedVehicle(none, none, none, base.traction(), base.footing(), base.energy(), 10, 0, 0, null);
        assertThat(vehicle.secondsTo(10)).isCloseTo(3, within(1e-9));
        assertThat(base.secondsTo(10)).isGreaterThan(3);
        assertThat(base.secondsTo(19)).isInfinite();
    }

    /** Worked by hand at 10 m/s: 200 N × 10 m/s = 2000 W / 36 km/h = 55.6 Wh/km; 10 kWh go 180 km, 150 with a fifth more. */
    @Test
    void range_is_energy_over_consumption() {
        ConvertedVehicle vehicle = vehicle(1e6, "0.8", promise("1", "1", "1"));
        assertThat(vehicle.rangeKm(vehicle.laden(), 10, false)).isCloseTo(180, within(1e-9));
        assertThat(vehicle.everydayKm(vehicle.laden(), 10, false)).isCloseTo(150, within(1e-9));
        // 500 W more: 2500 W / 36 km/h.
        assertThat(vehicle.rangeKm(vehicle.laden(), 10, true)).isCloseTo(144, within(1e-9));
    }

    @Test
    void a_motor_that_turns_too_fast_at_the_promised_speed_stops_the_order() {
        assertThat(judged(1e6, "0.8", promise("149", "67.9", "30")))
                .extracting(Finding::says)
                .containsExactly(
                        "At the promised 67.9 km/h the motor would turn at 6004 rpm, above its highest 6000 rpm:"
                                + " promise less, or fit a longer ratio.");
        assertThat(DrivingFinding.MOTOR_OVERSPEED.severity().name()).isEqualTo("STOP");
        assertThat(judged(1e6, "0.8", promise("149", "67.8", "30"))).isEmpty();
    }

    @Test
    void a_promised_speed_that_is_not_kept_is_found() {
        assertThat(judged(5000, "0.8", promise("149", "54.6", "30")))
                .extracting(Finding::says)
                .containsExactly("54.5 km/h is the highest speed that is kept on the level, fully laden, less than the"
                        + " promised 54.6 km/h.");
        assertThat(judged(5000, "0.8", promise("149", "54.5", "30"))).isEmpty();
    }

    /** Worked by hand: sin α' = 3333.33 / 9806.65 = 0.3399, α' = 19.871°, less arctan 0.0102 = 0.584°: tan = 35.0 %. */
    @Test
    void a_gradient_on_which_it_does_not_start_again_is_found_with_what_holds_it() {
        assertThat(judged(1e6, "0.8", promise("149", "60", "35.1")))
                .extracting(Finding::says)
                .containsExactly("At gross mass (1000 kg) the vehicle starts again on 34.9 % at most, less than the"
                        + " promised 35.1 %: the motor has too little torque for the ratio.");
        assertThat(judged(1e6, "0.8", promise("149", "60", "34.9"))).isEmpty();
        // 0.5 × 0.6 − 0.0102 = 28.98 %.
        assertThat(judged(1e6, "0.5", promise("149", "60", "29")))
                .extracting(found -> found.says("de"))
                .containsExactly("Bei zulässiger Gesamtmasse (1000 kg) fährt das Fahrzeug höchstens auf 28,9 % Steigung"
                        + " wieder an, weniger als die zugesagten 29 %: die Antriebsräder rutschen durch.");
        assertThat(judged(1e6, "0.5", promise("149", "60", "28.9"))).isEmpty();
    }

    @Test
    void a_range_below_the_promise_is_found() {
        assertThat(judged(1e6, "0.8", promise("150.5", "60", "30")))
                .extracting(found -> found.says("fr"))
                .containsExactly(
                        "En pleine charge, l'autonomie courante à 36 km/h par temps doux est de 150 km, moins que"
                                + " les 150,5 km promis.");
        assertThat(judged(1e6, "0.8", promise("149.9", "60", "30"))).isEmpty();
    }

    @Test
    void a_demo_order_reads_as_a_person_has_approved_it() {
        Approved.check(
                "trades/driving/bl-2001",
                new TextWriter(WIDE)
                        .text(worked(Demo.kit("bl-2001"))
                                .sheets()
                                .get(0)
                                .report()
                                .get()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"bl-1001", "bl-1002", "bl-1004", "bl-1005", "bl-1008", "bl-1010", "bl-2001", "bl-2002", "bl-2003"
            })
    void every_demo_order_is_judged_with_the_mass_of_its_weight_statement(String order) {
        KitInWork kit = Demo.kit(order);
        ConvertedVehicle vehicle = DrivingMaker.make(kit).vehicle();
        assertThat(vehicle).isNotNull();
        assertThat(vehicle.promise()).isNotNull();
        var cases = AxleLoadsTrade.weighing(kit).onAxles().cases();
        assertThat(vehicle.laden().massKg())
                .isEqualTo(cases.get(cases.size() - 1).loads().totalKg().doubleValue());
    }

    @Test
    void a_drive_unit_has_the_same_figures_in_every_demo_family() {
        Map<PartNumber, List<DriveUnit>> units = Demo.catalogue().families().values().stream()
                .flatMap(family -> family.driving().driveUnits().stream())
                .distinct()
                .collect(Collectors.groupingBy(DriveUnit::part));
        assertThat(units).hasSize(3).allSatisfy((part, all) -> assertThat(all).hasSize(1));
    }

    @Test
    void a_family_that_says_nothing_about_driving_is_not_judged_and_gets_no_sheet() {
        OrderSketch order = new OrderSketch(new CatalogueSketch().draw());
        TradeResult result = worked(new KitInWork(order.plan(), order.bill(), LocalDate.of(2026, 3, 2)));
        assertThat(result.findings().all()).extracting(Finding::kind).containsExactly(KitFinding.NOT_JUDGED);
        assertThat(result.sheets()).isEmpty();
        assertThat(order.plan().family().driving()).isEqualTo(Driving.NONE);
    }

    @Test
    void cautions_stand_on_the_sheet() {
        assertThat(new TextWriter(WIDE)
                        .text(worked(Demo.kit("bl-1001"))
                                .sheets()
                                .get(0)
                                .report()
                                .get())
                        .replaceAll("[\\s|]+", " "))
                .contains("The first drive is on closed ground")
                .contains("First estimates for the engineer's judgement")
                .contains("value, check before use");
    }
}
