package boltlore.trades.charging.sheets;

import boltlore.catalogue.Outlet;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.charging.Charging;
import boltlore.trades.charging.Export;
import boltlore.trades.charging.Figures;
import org.jspecify.annotations.Nullable;

/** What a load gets, and what guards people at it. */
final class ExportTable {

    private ExportTable() {}

    static ParticularsBuilder of(Charging charging, Export export) {
        Choices choices = charging.bill().resolved().choices();
        String socket =
                choices.inRole(Role.EXPORT).map(value -> value.says().english()).orElse(export.socket());
        ParticularsBuilder says = Particulars.named("export")
                .say("socket", "Socket", socket)
                .say("short", "For a short time", Figures.number(export.shortWatts(), 0) + " W")
                .say("continuous", "For hours", Figures.number(export.continuousWatts(), 0) + " W");
        guard(says, export.guard());
        return says;
    }

    private static void guard(ParticularsBuilder says, @Nullable Outlet guard) {
        if (guard != null) {
            says.say("residual", "Residual current", guard.residual())
                    .say(
                            "trip",
                            "Trips at",
                            guard.tripMilliamps() + " mA within " + guard.withinMilliseconds() + " ms");
        }
    }
}
