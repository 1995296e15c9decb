package boltlore.trades.charging;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Buses;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PowerCable;
import boltlore.catalogue.PrechargeResistor;
import boltlore.catalogue.Workshop;
import boltlore.report.CautionNotes;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Pack voltages, isolation, precharge, and each cable with its load and fuse. */
final class HighVoltagePage {

    private static final String CABLES =
            "Load ≤ fuse ≤ the current rating of the cable as installed. The load is the largest that flows at all,"
                    + " borne as if it flowed for hours. A fuse that protects against short circuits only may be larger than"
                    + " its cable, if something else limits the current and is set. Only a cable that the mains alone feed has"
                    + " no fuse here: the charging point protects it.";
    private static final String LOADS =
            "I = power / (efficiency × lowest voltage of what feeds the cable); the larger of the calculated and the"
                    + " declared current counts. Voltage drop = 2 × resistance × length × current out and back, √3 in place"
                    + " of 2 on three phases; resistance of the copper at its hottest, from the figure at 20 °C (IEC 60228).";

    private static final String CLOSES =
            "only where the link measures at least 95 % of the pack's voltage (common practice), never by time alone";

    private static final TableSpec<BranchCheck> BRANCHES = TableSpec.<BranchCheck>named("branches")
            .text("branch", "From – to", 32, check -> check.branch().says())
            .decimal("load", "Load", "A", 0, HighVoltagePage::load)
            .text("fuse", "Fuse", 34, HighVoltagePage::fuse)
            .decimal("fuse-amps", "Fuse", "A", 0, check -> ofFuse(check, Fuse::amps))
            .decimal("fuse-volts", "Rated voltage", "V", 0, check -> ofFuse(check, Fuse::volts))
            .text("cable", "Cable", check -> check.cable().part().text())
            .quantity("area", "Cross-section", "mm²", check -> check.cable().areaMm2())
            .decimal("rating", "Current rating as installed", "A", 1, BranchCheck::carriesAmps)
            .text("verdict", "Result", 12, BranchCheck::verdict);

    private static final TableSpec<BranchCheck> RUNS = TableSpec.<BranchCheck>named("loads")
            .text("branch", "From – to", 32, check -> check.branch().says())
            .text("derived", "How the load comes about", 50, HighVoltagePage::derived)
            .decimal("hours", "For hours", "A", 0, HighVoltagePage::forHours)
            .decimal("length", "Length", "mm", 0, check -> ofDrop(check, drop -> BigDecimal.valueOf(drop.lengthMm())))
            .decimal("drop", "Voltage drop", "V", 2, check -> ofDrop(check, VoltageDrop::volts))
            .decimal("drop-percent", "Voltage drop", "%", 2, check -> ofDrop(check, VoltageDrop::percent))
            .text("other-end", "Fed from the other end, protected by", 40, HighVoltagePage::otherEnd);

    private static final BigDecimal HARMLESS_JOULE = new BigDecimal("0.2");

    private HighVoltagePage() {}

    static PageBuilder compose(Charging charging, Workshop workshop, String footer) {
        PageBuilder page = Page.named("High voltage").footer(footer).landscape();
        page.title("High voltage");
        Pack pack = charging.fitted().pack();
        if (pack != null) {
            page.add(particulars(charging, pack));
        }
        page.heading("Cables and fuses").add(BRANCHES.of(charging.branches())).note(CABLES);
        page.heading("Loads and voltage drop").add(RUNS.of(charging.branches())).note(LOADS);
        page.heading("Installation conditions").add(cables(charging));
        CautionNotes.always(page, "high-voltage", workshop, workshop.language());
        return page.signatures("Electrically qualified person");
    }

    private static @Nullable String fuse(BranchCheck check) {
        Fuse fuse = check.fuse();
        String limitedBy = check.branch().protection().limitedBy();
        if (fuse != null) {
            return fuse.says() + " (" + fuse.part() + ")";
        }
        return limitedBy.isEmpty() ? null : "none: " + limitedBy;
    }

    private static @Nullable BigDecimal ofFuse(BranchCheck check, Function<Fuse, BigDecimal> figure) {
        Fuse fuse = check.fuse();
        return fuse == null ? null : figure.apply(fuse);
    }

    private static @Nullable BigDecimal load(BranchCheck check) {
        BranchLoad load = check.load();
        return load == null ? null : load.mostAmps();
    }

    private static @Nullable BigDecimal forHours(BranchCheck check) {
        BranchLoad load = check.load();
        return load == null ? null : load.hoursAmps();
    }

    private static String derived(BranchCheck check) {
        BranchLoad load = check.load();
        return load == null ? "not known" : load.says();
    }

    private static @Nullable BigDecimal ofDrop(BranchCheck check, Function<VoltageDrop, BigDecimal> figure) {
        VoltageDrop drop = check.drop();
        return drop == null ? null : figure.apply(drop);
    }

    private static @Nullable String otherEnd(BranchCheck check) {
        Branch.Protection.FarEnd farEnd = check.branch().protection().farEnd();
        Fuse fuse = check.farFuse();
        if (fuse != null) {
            return fuse.says() + " (" + fuse.part() + ")";
        }
        return farEnd == null ? null : farEnd.limitedBy();
    }

    /** What is assumed of each cable, and where it is derated. */
    private static TableBuilder cables(Charging charging) {
        return TableSpec.<PowerCable>named("cables")
                .text("cable", "Cable", cable -> cable.part().text())
                .decimal("amps", "Current rating", "A", 0, PowerCable::amps)
                .decimal("volts", "Rated voltage", "V", 0, PowerCable::volts)
                .text("assumed", "Assumed installation", 70, cable -> cable.assumed() + derated(charging, cable))
                .of(charging.branches().stream()
                        .map(BranchCheck::cable)
                        .distinct()
                        .toList());
    }

    private static String derated(Charging charging, PowerCable cable) {
        return charging.branches().stream()
                .filter(check -> check.cable().equals(cable))
                .map(BranchCheck::branch)
                .filter(branch -> !branch.because().isEmpty())
                .map(branch -> "; " + branch.says() + " × " + branch.derating().toPlainString() + ": "
                        + branch.because().replaceFirst("\\.$", ""))
                .collect(Collectors.joining());
    }

    private static ParticularsBuilder particulars(Charging charging, Pack pack) {
        ParticularsBuilder says = Particulars.named("high-voltage")
                .say("voltage", "Pack voltage", voltages(pack))
                .say("energy", "Energy", NumberFormats.number(pack.nominalKwh(), 1) + " kWh nominal");
        isolation(says, charging, charging.electrics().buses());
        Precharge precharge = charging.precharge();
        PrechargeResistor resistor = charging.fitted().resistor();
        if (precharge != null && resistor != null) {
            precharge(says, precharge, resistor, pack);
        }
        return says;
    }

    private static String voltages(Pack pack) {
        return NumberFormats.number(pack.lowestVolts(), 1) + " empty, " + NumberFormats.number(pack.nominalVolts(), 1)
                + " nominal, " + NumberFormats.volts(pack.highestVolts()) + " full" + voltageClass(pack);
    }

    private static String voltageClass(Pack pack) {
        return HighVoltage.direct(pack.highestVolts()) ? ": high voltage, class B" : ": not above 60 V";
    }

    private static void isolation(ParticularsBuilder says, Charging charging, @Nullable Buses buses) {
        if (buses != null && charging.isolationOhm() != null) {
            says.say(
                    "isolation",
                    "Isolation, at least",
                    NumberFormats.ohm(charging.isolationOhm()) + " at the highest voltage: "
                            + NumberFormats.number(Isolation.ohmPerVolt(buses), 0) + " Ω for each V, " + buses.says());
        }
    }

    private static void precharge(ParticularsBuilder says, Precharge precharge, PrechargeResistor resistor, Pack pack) {
        BigDecimal volts = pack.highestVolts();
        says.say("link", "DC link", link(precharge, volts))
                .say("precharge", "Precharge", pulse(precharge, volts))
                .say("close", "Main contactor closes", CLOSES)
                .say("abort", "Precharge aborts", aborts(precharge, resistor, volts));
    }

    private static String aborts(Precharge precharge, PrechargeResistor resistor, BigDecimal volts) {
        return "after " + NumberFormats.number(resistor.abortAfterSeconds(), 3)
                + " s below 95 %: the controller opens the precharge contactor and locks it. A shorted link leaves "
                + NumberFormats.number(precharge.shortedJoules(volts, resistor.abortAfterSeconds()), 0)
                + " J in a resistor rated " + NumberFormats.number(resistor.pulseJoule(), 0) + " J a pulse";
    }

    /** Above 0.2 J what stays in the link hurts whoever touches it (ISO 6469-3, from memory). */
    private static String link(Precharge precharge, BigDecimal volts) {
        BigDecimal joules = precharge.joules(volts);
        String holds = joules.compareTo(HARMLESS_JOULE) > 0
                ? "; full it holds " + NumberFormats.number(joules, 1)
                        + " J, which can kill: dead only once discharged and proved so"
                : "";
        return NumberFormats.number(precharge.microfarad(), 0) + " µF through "
                + NumberFormats.ohm(precharge.resistorOhm()) + holds;
    }

    private static String pulse(Precharge precharge, BigDecimal volts) {
        return NumberFormats.number(precharge.secondsToGate(), 3) + " s to 95 % in a sound link, "
                + NumberFormats.number(precharge.joules(volts), 1) + " J in the resistor, "
                + NumberFormats.amps(precharge.firstAmps(volts)) + " at first";
    }
}
