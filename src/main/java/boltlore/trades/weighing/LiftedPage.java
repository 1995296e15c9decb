package boltlore.trades.weighing;

import boltlore.catalogue.Workshop;
import boltlore.findings.Finding;
import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The worksheet for the height of the centre of gravity of the converted vehicle, found by lifting an axle. */
record LiftedPage(List<LiftedAxle> measured, OnAxles onAxles, BigDecimal tolerancePercent) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private static final String FRONT = "front";
    private static final String REAR = "rear";

    /** Measurements that ISO 10392:2011, 6.2.2, recommends at least. */
    private static final int RECOMMENDED = 3;

    /** A line of the empty worksheet: lifted step by step and lowered again, one axle after the other. */
    private record Reading(int number, String axle, String way) {

        private static List<Reading> all() {
            List<Reading> all = new ArrayList<>();
            for (String axle : List.of(FRONT, REAR)) {
                for (String way : List.of("up", "down")) {
                    for (int step = 0; step < RECOMMENDED; step++) {
                        all.add(new Reading(all.size() + 1, axle, way));
                    }
                }
            }
            return all;
        }
    }

    private int wheelbaseMm() {
        return onAxles.chassis().wheelbaseMm();
    }

    private List<BigDecimal> heights() {
        return measured.stream()
                .flatMap(each -> each.heightMm(wheelbaseMm()).stream())
                .toList();
    }

    private Optional<BigDecimal> mean() {
        List<BigDecimal> all = heights();
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(all.stream()
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .divide(BigDecimal.valueOf(all.size()), MathContext.DECIMAL64));
    }

    PageBuilder page(Workshop workshop, String footer) {
        PageBuilder page = Page.named("Height by lifting")
                .footer(footer)
                .title("Height of the centre of gravity, by lifting an axle");
        CautionNotes.always(page, "weighbridge", workshop, workshop.language());
        page.note("h = r + (gain of the standing axle × wheelbase / mass) × cot θ, sin θ = lift / wheelbase, which is "
                + wheelbaseMm()
                + " mm (ISO 10392:2011, axle-lift method). Block the suspension, tyres at their highest pressure, liquids full, gear box in neutral,"
                + " brakes off. Chock the wheels of the axle that stands on the scale: the rear ones while the front axle is"
                + " lifted, the front ones while the rear axle is; the lifted wheels stay free to roll on their platform. Lift"
                + " in three steps or more and lower again; repeat with the other axle. For the engineer's judgement.");
        page.add(measured.isEmpty() ? blank().of(Reading.all()) : filled().of(measured));
        if (!measured.isEmpty()) {
            page.add(result());
        }
        return page;
    }

    private TableSpec<LiftedAxle> filled() {
        return TableSpec.<LiftedAxle>named("lifted")
                .text("axle", "Axle lifted", each -> each.front() ? FRONT : REAR)
                .whole("lift", "Lift", "mm", LiftedAxle::liftMm)
                .whole("radius", "Wheel radius", "mm", LiftedAxle::radiusMm)
                .decimal("front", "Front, level", "kg", 1, each -> each.level().frontKg())
                .decimal("rear", "Rear, level", "kg", 1, each -> each.level().rearKg())
                .decimal("standing", "Standing axle, lifted", "kg", 1, LiftedAxle::standingKg)
                .decimal(
                        "angle",
                        "Angle θ",
                        "°",
                        2,
                        each -> each.angleDegrees(wheelbaseMm()).orElse(null))
                .decimal("gain", "Gain", "kg", 1, LiftedAxle::gainKg)
                .decimal(
                        "height",
                        "Height above the road",
                        "mm",
                        0,
                        each -> each.heightMm(wheelbaseMm()).orElse(null));
    }

    private static TableSpec<Reading> blank() {
        return TableSpec.<Reading>named("lifted")
                .whole("row", "No.", "", Reading::number)
                .text("axle", "Axle lifted", Reading::axle)
                .text("way", "Way", Reading::way)
                .box(Column.blank("lift", "Lift (mm)"))
                .box(Column.blank("radius", "Wheel radius (mm)"))
                .box(Column.blank("front", "Front, level (kg)"))
                .box(Column.blank("rear", "Rear, level (kg)"))
                .box(Column.blank("standing", "Standing axle (kg)"))
                .box(Column.blank("angle", "Angle θ (°)"))
                .box(Column.blank("gain", "Gain (kg)"))
                .box(Column.blank("height", "Height h (mm)"));
    }

    private ParticularsBuilder result() {
        Kind mm = Kind.decimal(0).in("mm");
        ParticularsBuilder says = Particulars.named("lifted-height")
                .say("lifted-wheelbase", "Wheelbase", mm, BigDecimal.valueOf(wheelbaseMm()));
        mean().ifPresent(height -> {
            says.say("lifted-mean", "Height, mean", mm, height);
            List<BigDecimal> all = heights();
            BigDecimal spread = all.stream()
                    .max(BigDecimal::compareTo)
                    .orElse(height)
                    .subtract(all.stream().min(BigDecimal::compareTo).orElse(height));
            says.say("lifted-spread", "Spread", mm, spread);
            CentreHeight computed = onAxles.height();
            if (computed != null) {
                says.say("lifted-computed", "Height, computed", mm, computed.afterMm());
            }
        });
        return says;
    }

    /** What makes the measured figures doubtful. */
    List<Finding> findings() {
        List<Finding> found = new ArrayList<>();
        for (int i = 0; i < measured.size(); i++) {
            check("measurement " + (i + 1), measured.get(i), found);
        }
        if (!measured.isEmpty() && measured.size() < RECOMMENDED) {
            found.add(Finding.of(
                    WeighingFinding.FEW_LIFTS, "lifted axle", "count", measured.size(), "least", RECOMMENDED));
        }
        tracks().ifPresent(track -> mean().filter(height -> height.compareTo(track) > 0)
                .ifPresent(height -> found.add(Finding.of(
                        WeighingFinding.HEIGHT_NOT_PLAUSIBLE,
                        "lifted axle",
                        "height",
                        Digits.upTo(height, 0),
                        "track",
                        Digits.upTo(track, 0)))));
        return found;
    }

    private Optional<BigDecimal> tracks() {
        return Optional.ofNullable(onAxles.height()).flatMap(height -> Optional.ofNullable(height.tracksMm()));
    }

    private void check(String subject, LiftedAxle each, List<Finding> found) {
        if (each.gainKg().signum() <= 0) {
            found.add(Finding.of(
                    WeighingFinding.STANDING_AXLE_GAINS_NOTHING, subject, "gain", Digits.upTo(each.gainKg(), 1)));
        }
        if (each.tooLittle(wheelbaseMm()) || each.heightMm(wheelbaseMm()).isEmpty()) {
            found.add(Finding.of(
                    WeighingFinding.LIFT_NOT_PLAUSIBLE, subject, "lift", each.liftMm(), "wheelbase", wheelbaseMm()));
        }
        level(subject, each, found);
    }

    private void level(String subject, LiftedAxle each, List<Finding> found) {
        for (Limited limited : List.of(Limited.FRONT, Limited.REAR)) {
            BigDecimal computed = onAxles.converted().on(limited);
            BigDecimal weighed = each.level().on(limited);
            BigDecimal most = computed.multiply(tolerancePercent).divide(HUNDRED, MathContext.DECIMAL64);
            if (weighed.subtract(computed).abs().compareTo(most) > 0) {
                found.add(Finding.of(
                        WeighingFinding.LEVEL_LOAD_DIFFERS,
                        subject + ", " + limited.heading(),
                        "what",
                        limited.wording(),
                        "weighed",
                        new BigDecimal(Digits.upTo(weighed, 1)),
                        "computed",
                        new BigDecimal(Digits.upTo(computed, 1)),
                        "tolerance",
                        tolerancePercent));
            }
        }
    }
}
