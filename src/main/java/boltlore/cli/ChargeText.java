package boltlore.cli;

import boltlore.trades.charging.AcCharging;
import boltlore.trades.charging.Charging;
import boltlore.trades.charging.DcCharging;
import boltlore.trades.charging.Export;
import boltlore.trades.charging.Figures;
import boltlore.trades.charging.sheets.ChargeWords;
import java.nio.file.Path;
import java.util.Locale;

/** Charging of one order for the terminal. */
final class ChargeText {

    private static final String ROW = "  %-12s %-25s %-12s %8s %8s%n";

    private ChargeText() {}

    static void print(Screen screen, Charging charging) {
        screen.heading(charging.bill().order().name() + ", "
                + charging.bill().resolved().choices().family().says().english());
        screen.text(String.format(Locale.ROOT, ROW, "where", "supply", "cable code", "power", "20-80 %"));
        charging.ac().forEach(way -> way(screen, way));
        DcCharging dc = charging.dc();
        if (dc != null) {
            screen.text(String.format(
                    Locale.ROOT,
                    ROW,
                    "DC post",
                    "",
                    "of the post",
                    Figures.kilowatts(dc.kilowatts()),
                    Figures.hours(dc.hours())));
            screen.wrapped(6, dc.limits());
        }
        Export export = charging.export();
        if (export != null) {
            screen.wrapped(2, export(export));
        }
        if (charging.isolationOhm() != null) {
            screen.wrapped(
                    2, "Isolation: at least " + Figures.ohm(charging.isolationOhm()) + " at the highest voltage.");
        }
        ChargeWords.of(charging)
                .forEach(found -> screen.wrapped(2, found.about() + ", " + found.verdict() + ": " + found.says()));
    }

    static String written(int orders, Path out) {
        return (orders == 1 ? "Charging sheet" : orders + " charging sheets") + " written to " + out;
    }

    private static void way(Screen screen, AcCharging way) {
        String cable = way.cable() == null
                ? "of the post"
                : way.cable().amps(way.mains().phases()) + " A";
        screen.text(String.format(
                Locale.ROOT,
                ROW,
                way.mains().says(),
                way.mains().figures(),
                cable,
                Figures.kilowatts(way.kilowatts()),
                Figures.hours(way.hours())));
        screen.wrapped(6, way.chain().whatLimits());
    }

    private static String export(Export export) {
        return "Export: " + export.socket() + ", " + Figures.volts(export.volts()) + ", "
                + Figures.number(export.shortWatts(), 0) + " W for a short time, "
                + Figures.number(export.continuousWatts(), 0) + " W for hours.";
    }
}
