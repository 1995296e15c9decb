package boltlore.trades.driving;

import boltlore.bill.Item;
import boltlore.catalogue.Driving.Promise;
import boltlore.findings.Findings;
import boltlore.measure.PartNumber;
import boltlore.report.CautionNotes;
import boltlore.report.FindingsTable;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.ParticularsBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import boltlore.trades.driving.ConvertedVehicle.Reached;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The pages: what is promised and what is reached; then each speed with what it takes. */
final class DrivingPage {

    private static final int TABLE_STEP = 10;
    private static final double PERCENT = 100;
    private static final double WATT_IN_KW = 1000;

    private static final String ESTIMATE =
            "First estimates for the engineer's judgement: tyres, air, road and the state"
                    + " of the battery differ. A coast-down and a drive with the finished vehicle decide.";

    private static final String FORMULAS =
            "Resistance on the level: F = f0 + f1 v + f2 v². Everyday range: usable energy"
                    + " / consumption at a steady speed, less what stops, hills, wind and cold add. Gradients: rise over"
                    + " horizontal distance. Acceleration with the short-time torque, the restart gradient too; all else with"
                    + " the continuous one. Between the points of its data sheet a motor gives no more than its rated power.";

    /** A promise beside what is reached. */
    private record Promised(
            String figure,
            String unit,
            double reached,
            int decimals,
            @Nullable BigDecimal wanted,
            boolean atMost,
            String by) {

        String result() {
            if (wanted == null) {
                return "";
            }
            boolean kept = atMost ? reached <= wanted.doubleValue() : reached >= wanted.doubleValue();
            return kept ? "OK" : "not kept";
        }
    }

    private static final TableSpec<Promised> PROMISED = TableSpec.<Promised>named("promised")
            .text("figure", "Figure", 46, Promised::figure)
            .quantity("reached", "Reached", "", row -> rounded(row.reached(), row.decimals()))
            .text("bound", "Bound", row -> row.wanted() == null ? "" : row.atMost() ? "at most" : "at least")
            .quantity("wanted", "Promised", "", Promised::wanted)
            .text("unit", "Unit", Promised::unit)
            .text("by", "Limited by", 34, Promised::by)
            .text("result", "Result", Promised::result);

    private DrivingPage() {}

    static PageBuilder compose(ConvertedVehicle vehicle, Findings findings, KitInWork kit, String footer) {
        PageBuilder page = Page.named("Driving").footer(footer);
        page.title("Driving").add(facts(vehicle, kit, KitReport.head(kit, "driving-head")));
        page.heading("What is promised, and what is reached").add(promises(vehicle));
        page.picture(TractionDrawing.draw(vehicle));
        page.note(ESTIMATE);
        FindingsTable.add(page, kit.answered(findings), kit.workshop().language());
        CautionNotes.always(page, "driving", kit.workshop(), kit.workshop().language());
        return page.signatures("Checked by");
    }

    static TableBuilder promises(ConvertedVehicle vehicle) {
        Promise promise = vehicle.promise();
        Reached top = vehicle.topSpeed();
        Reached restart = vehicle.restart();
        List<Promised> rows = new ArrayList<>();
        rows.add(row(
                "Top speed",
                "km/h",
                kmh(top),
                1,
                promise == null ? null : promise.topSpeedKmh(),
                top.by().says()));
        rows.add(row(
                "Restart gradient, gross mass",
                "%",
                PERCENT * restart.figure(),
                1,
                promise == null ? null : promise.gradientPercent(),
                restart.by().says()));
        if (promise != null) {
            double ms = ConvertedVehicle.ms(promise.topSpeedKmh().doubleValue());
            BigDecimal most = BigDecimal.valueOf(vehicle.traction().unit().mostRpm());
            double rpm = vehicle.traction().rpm(ms);
            rows.add(new Promised("Motor at the promised top speed", "rpm", rpm, 0, most, true, ""));
            ranges(vehicle, promise, rows);
        }
        return PROMISED.of(rows);
    }

    private static void ranges(ConvertedVehicle vehicle, Promise promise, List<Promised> rows) {
        String at = " at " + promise.rangeAtKmh().toPlainString() + " km/h";
        double ms = ConvertedVehicle.ms(promise.rangeAtKmh().doubleValue());
        double laden = vehicle.everydayKm(vehicle.laden(), ms, false);
        rows.add(row("Everyday range" + at + ", fully laden", "km", laden, 0, promise.rangeKm(), ""));
        double climate = vehicle.everydayKm(vehicle.laden(), ms, true);
        rows.add(row("The same with heating or cooling", "km", climate, 0, null, ""));
        double alone = vehicle.everydayKm(vehicle.alone(), ms, false);
        rows.add(row("Everyday range" + at + ", driver alone", "km", alone, 0, null, ""));
    }

    private static Promised row(
            String figure, String unit, double reached, int decimals, @Nullable BigDecimal wanted, String by) {
        return new Promised(figure, unit, reached, decimals, wanted, false, by);
    }

    static ParticularsBuilder facts(ConvertedVehicle vehicle, KitInWork kit, ParticularsBuilder says) {
        Resistance laden = vehicle.laden();
        return says.say(
                        "drive-unit",
                        "Drive unit",
                        named(vehicle.traction().unit().part(), kit))
                .say("laden", "Mass, fully laden", Kind.decimal(1).in("kg"), mass(laden))
                .say("gross", "Gross mass", Kind.decimal(1).in("kg"), mass(vehicle.gross()))
                .say("f0", "Road load f0, fully laden", Kind.decimal(1).in("N"), number(laden.f0()))
                .say("f1", "Road load f1", Kind.decimal(3).in("N per m/s"), number(laden.f1()))
                .say("f2", "Road load f2", Kind.decimal(4).in("N per (m/s)²"), number(laden.f2()))
                .say(
                        "ratio",
                        "Overall ratio",
                        Kind.decimal(2),
                        number(vehicle.traction().ratio()))
                .say("energy", "Usable energy", Kind.decimal(1).in("kWh"), number(vehicle.usableKwh()))
                .say("beside", "Auxiliary load", Kind.decimal(0).in("W"), number(vehicle.mildWatts()))
                .say("climate", "Heating or cooling", Kind.decimal(0).in("W"), number(vehicle.climateWatts()))
                .say("to-50", "From 0 to 50 km/h", seconds(vehicle, 50));
    }

    private static String named(PartNumber number, KitInWork kit) {
        return kit.bill()
                .all()
                .map(Item::part)
                .filter(part -> part.number().equals(number))
                .map(part -> number.text() + ", " + kit.says(part.name()))
                .findFirst()
                .orElse(number.text());
    }

    /** Not rounded before it is printed, so that it reads as in the weight statement. */
    private static BigDecimal mass(Resistance load) {
        return BigDecimal.valueOf(load.massKg());
    }

    private static String seconds(ConvertedVehicle vehicle, double kmh) {
        double seconds = vehicle.secondsTo(ConvertedVehicle.ms(kmh));
        return Double.isInfinite(seconds)
                ? "never"
                : BigDecimal.valueOf(seconds).setScale(1, RoundingMode.CEILING).toPlainString() + " s";
    }

    static PageBuilder speeds(ConvertedVehicle vehicle, String footer) {
        return Page.named("By speed")
                .landscape()
                .footer(footer)
                .title("By speed, fully laden")
                .add(bySpeed(vehicle))
                .note(FORMULAS)
                .note("Road load: " + vehicle.traction().road().source())
                .note("Drive unit: " + vehicle.traction().unit().source())
                .note("Energy: " + vehicle.energy().source());
    }

    private static TableBuilder bySpeed(ConvertedVehicle vehicle) {
        Resistance laden = vehicle.laden();
        Traction traction = vehicle.traction();
        return TableSpec.<Double>named("by-speed")
                .decimal("speed", "Speed", "km/h", 1, ms -> number(ConvertedVehicle.kmh(ms)))
                .decimal("rpm", "Motor", "rpm", 0, ms -> number(traction.rpm(ms)))
                .decimal("resistance", "Resistance", "N", 0, ms -> number(laden.newton(ms)))
                .decimal("power", "At the wheels", "kW", 1, ms -> number(laden.newton(ms) * ms / WATT_IN_KW))
                .decimal("consumption", "Consumption", "Wh/km", 0, ms -> number(vehicle.whPerKm(laden, ms, false)))
                .decimal("range", "Range, steady", "km", 0, ms -> number(vehicle.rangeKm(laden, ms, false)))
                .decimal(
                        "climate", "Range, heating or cooling", "km", 0, ms -> number(vehicle.rangeKm(laden, ms, true)))
                .decimal("gradient", "Gradient, continuous", "%", 1, ms -> number(PERCENT * vehicle.gradientKept(ms)))
                .decimal("force", "Short-time force", "N", 0, ms -> number(traction.peakNewton(ms)))
                .decimal("acceleration", "Acceleration", "m/s²", 2, ms -> number(vehicle.acceleration(ms)))
                .of(tabled(vehicle));
    }

    /** Tens of km/h below the top speed, and the top speed. */
    private static List<Double> tabled(ConvertedVehicle vehicle) {
        double top = vehicle.topSpeed().figure();
        List<Double> all = new ArrayList<>();
        for (int kmh = TABLE_STEP; ConvertedVehicle.ms(kmh) < top; kmh += TABLE_STEP) {
            all.add(ConvertedVehicle.ms(kmh));
        }
        if (top > 0) {
            all.add(top);
        }
        return all;
    }

    private static double kmh(Reached reached) {
        return ConvertedVehicle.kmh(reached.figure());
    }

    /** With the digits that a first estimate may have. */
    private static BigDecimal number(double figure) {
        return BigDecimal.valueOf(figure).round(new MathContext(6));
    }

    private static BigDecimal rounded(double figure, int decimals) {
        BigDecimal number = BigDecimal.valueOf(figure).round(new MathContext(9)).setScale(decimals, RoundingMode.FLOOR);
        return number.stripTrailingZeros().scale() < 0 ? number.setScale(0) : number;
    }
}
