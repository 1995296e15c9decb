package boltlore.trades.charging.sheets;

import boltlore.catalogue.Buses;
import boltlore.catalogue.Pack;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.charging.Charging;
import boltlore.trades.charging.Figures;
import boltlore.trades.charging.HighVoltage;
import boltlore.trades.charging.Isolation;
import boltlore.trades.charging.Precharge;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Pack voltages, isolation, precharge, and each cable with its load and fuse. */
final class HighVoltagePage {

    private static final String CABLES =
            "Load ≤ fuse ≤ what the cable carries where it lies. A fuse that guards against short"
                    + " circuits only may be larger than its cable, if something else limits the current and is set. A cable with no"
                    + " fuse here is guarded outside the vehicle.";

    private HighVoltagePage() {}

    static PageBuilder of(Charging charging, String footer) {
        PageBuilder page = Page.named("High voltage").footer(footer).landscape();
        page.title("High voltage");
        Pack pack = charging.fitted().pack();
        if (pack != null) {
            page.add(particulars(charging, pack));
            page.heading("Cables and fuses").add(BranchesTable.of(charging)).note(CABLES);
        }
        page.heading("Lay of the cables").add(CablesTable.of(charging));
        ChargingCautions.highVoltage(page);
        return page.signatures("Electrically qualified person");
    }

    private static ParticularsBuilder particulars(Charging charging, Pack pack) {
        ParticularsBuilder says = Particulars.named("high-voltage")
                .say("voltage", "Pack voltage", voltages(pack))
                .say("energy", "Energy", Figures.number(pack.nominalKwh(), 1) + " kWh nominal");
        isolation(says, charging, charging.electrics().buses());
        Precharge precharge = charging.precharge();
        if (precharge != null) {
            precharge(says, precharge, pack);
        }
        return says;
    }

    private static String voltages(Pack pack) {
        return Figures.number(pack.lowestVolts(), 1) + " empty, " + Figures.number(pack.nominalVolts(), 1)
                + " nominal, " + Figures.volts(pack.highestVolts()) + " full" + voltageClass(pack);
    }

    private static String voltageClass(Pack pack) {
        return HighVoltage.direct(pack.highestVolts()) ? ": high voltage, class B" : ": not above 60 V";
    }

    private static void isolation(ParticularsBuilder says, Charging charging, @Nullable Buses buses) {
        if (buses != null && charging.isolationOhm() != null) {
            says.say(
                    "isolation",
                    "Isolation, at least",
                    Figures.ohm(charging.isolationOhm()) + " at the highest voltage: "
                            + Figures.number(Isolation.ohmPerVolt(buses), 0) + " Ω for each V, " + buses.says());
        }
    }

    private static void precharge(ParticularsBuilder says, Precharge precharge, Pack pack) {
        says.say("link", "DC link", link(precharge))
                .say("precharge", "Precharge", pulse(precharge, pack.highestVolts()));
    }

    private static String link(Precharge precharge) {
        return Figures.number(precharge.microfarad(), 0) + " µF through " + Figures.ohm(precharge.resistorOhm());
    }

    private static String pulse(Precharge precharge, BigDecimal volts) {
        return Figures.number(precharge.secondsToGate(), 3) + " s to 95 %, "
                + Figures.number(precharge.joules(volts), 1) + " J in the resistor, "
                + Figures.amps(precharge.firstAmps(volts)) + " at first";
    }
}
