package boltlore.trades.charging;

import boltlore.catalogue.Outlet;
import boltlore.catalogue.Pack;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.power.Power;
import boltlore.report.CautionNotes;
import boltlore.report.FindingsTable;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The first page: what power comes from where, what limits it, what the outlet gives, what was found and compared. */
final class ChargingPage {

    private static final String TIME =
            "Hours from 20 to 80 % = 0.6 × usable energy / (power × efficiency of the charger)."
                    + " Full power is taken all the way: that a pack takes less when it is nearly full, cold or hot is not counted,"
                    + " nor what the vehicle uses meanwhile, so the real time is longer.";
    private static final String STANDS_FOR =
            "Power on alternating current is the least phases × the voltage of one phase"
                    + " × the least current, and no more than the charger's rated power; on direct current the lesser current of"
                    + " inlet and pack × the pack's nominal voltage. A cable or charging point that brings no more than a smaller"
                    + " one is left out.";

    /** A row of the table: on alternating current, or on direct current. */
    private record Way(@Nullable AcCharging ac, @Nullable DcCharging dc) {

        <T> @Nullable T ofAc(Function<AcCharging, @Nullable T> value) {
            return ac == null ? null : value.apply(ac);
        }

        <T> @Nullable T either(Function<AcCharging, @Nullable T> ofAc, Function<DcCharging, T> ofDc) {
            return ac != null ? ofAc.apply(ac) : dc == null ? null : ofDc.apply(dc);
        }
    }

    private static final TableSpec<Way> WAYS = TableSpec.<Way>named("ways")
            .text("where", "Where", 16, way -> way.either(ac -> ac.mains().says(), dc -> "DC charger"))
            .whole("supply", "Supply", "A", way -> way.ofAc(ac -> ac.mains().amps()))
            .text("cable", "Cable", 14, way -> way.either(ChargingPage::cable, dc -> "tethered"))
            .whole("phases", "Phases in use", "", way -> way.ofAc(ac -> power(ac, Power::phases)))
            .decimal(
                    "volts",
                    "Each phase",
                    "V",
                    0,
                    way -> way.ofAc(ac -> ac.mains().volts()))
            .decimal("amps", "Current", "A", 1, way -> way.either(ac -> power(ac, Power::amps), DcCharging::amps))
            .decimal("kilowatts", "Power", "kW", 1, way -> way.either(AcCharging::kilowatts, DcCharging::kilowatts))
            .decimal("hours", "20–80 %", "h", 1, way -> way.either(AcCharging::hours, DcCharging::hours))
            .text(
                    "limits",
                    "What limits it",
                    44,
                    way -> way.either(ac -> ac.chain().whatLimits(), DcCharging::limits));

    private ChargingPage() {}

    private static TableSpec<Comparison> compared(String language) {
        return TableSpec.<Comparison>named("compared")
                .text("what", "Subject", 16, Comparison::about)
                .text("verdict", "Result", 8, Comparison::verdict)
                .text(
                        "comparison",
                        "Compared with its limit",
                        74,
                        row -> row.finding().says(language));
    }

    static PageBuilder compose(Charging charging, KitInWork kit, String footer) {
        PageBuilder page = Page.named("Charging").footer(footer);
        page.title("Charging and high voltage").add(head(charging, kit));
        ChainDrawing.draw(charging).ifPresent(page::picture);
        page.heading("Power and time").add(ways(charging)).note(TIME).note(STANDS_FOR);
        Export export = charging.export();
        if (export != null) {
            page.heading("Vehicle-to-load outlet")
                    .add(outlet(charging, export, kit.workshop().language()));
        }
        FindingsTable.add(
                page, kit.answered(charging.findings()), kit.workshop().language());
        page.heading("Compared outside the cables")
                .add(compared(kit.workshop().language()).of(charging.others()));
        CautionNotes.always(page, "charging", kit.workshop(), kit.workshop().language());
        return page.signatures("Checked by");
    }

    /** What was compared and keeps its limit: the rest is among the findings. */
    static TableBuilder kept(Charging charging, String language) {
        return compared(language)
                .of(charging.others().stream().filter(Comparison::holds).toList());
    }

    /** Where it can be charged, a row for each supply and cable. */
    static TableBuilder ways(Charging charging) {
        Stream<Way> dc = Stream.ofNullable(charging.dc()).map(way -> new Way(null, way));
        List<Way> all = Stream.concat(charging.ac().stream().map(way -> new Way(way, null)), dc)
                .toList();
        return WAYS.of(all);
    }

    private static String cable(AcCharging way) {
        if (way.lead() != null) {
            return way.lead().part() + ", " + NumberFormats.amps(way.lead().amps());
        }
        return way.cable() == null ? "tethered" : way.cable().amps(way.mains().phases()) + " A";
    }

    private static <T> @Nullable T power(AcCharging way, Function<Power, T> figure) {
        return way.chain().power().map(figure).orElse(null);
    }

    /** Who it is for, and what it is charged with. */
    private static ParticularsBuilder head(Charging charging, KitInWork kit) {
        ParticularsBuilder says = KitReport.head(kit, "charging")
                .say("inlet", "Inlet", chosen(kit, Role.INLET))
                .say("charger", "Charger", chosen(kit, Role.CHARGER));
        if (kit.family().inRole(Role.DC_INLET).isPresent()) {
            says.say("dc-inlet", "DC inlet", chosen(kit, Role.DC_INLET));
        }
        Mains mains = charging.mains();
        if (mains != null) {
            says.say("supply", "Supply", mains.says() + ": " + mains.figures());
        }
        Pack pack = charging.fitted().pack();
        return pack == null ? says : says.say("pack", "Battery pack", pack(pack));
    }

    private static String chosen(KitInWork kit, Role role) {
        return kit.choices().inRole(role).map(value -> kit.says(value.says())).orElse("not chosen");
    }

    private static String pack(Pack pack) {
        return pack.says() + ": " + NumberFormats.volts(pack.nominalVolts()) + ", "
                + NumberFormats.number(pack.usableKwh(), 1) + " kWh usable";
    }

    /** What a load gets, and what protects people at it. */
    static ParticularsBuilder outlet(Charging charging, Export export, String language) {
        Choices choices = charging.bill().resolved().choices();
        String socket = choices.inRole(Role.EXPORT)
                .map(value -> value.says().in(language))
                .orElse(export.socket());
        ParticularsBuilder says = Particulars.named("export")
                .say("socket", "Socket", socket)
                .say("short", "Short-time rating", watts(export.shortWatts()))
                .say("continuous", "Continuous rating", watts(export.continuousWatts()));
        Outlet guard = export.guard();
        return guard == null
                ? says
                : says.say("residual", "Residual-current device", guard.residual())
                        .say(
                                "trip",
                                "Trips at",
                                guard.tripMilliamps() + " mA within " + guard.withinMilliseconds() + " ms");
    }

    private static String watts(BigDecimal watts) {
        return NumberFormats.number(watts, 0) + " W";
    }
}
