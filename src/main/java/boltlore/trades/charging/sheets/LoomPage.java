package boltlore.trades.charging.sheets;

import boltlore.catalogue.InletWiring;
import boltlore.catalogue.ProximityKind;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.charging.Charging;
import boltlore.trades.charging.LoomPart;
import boltlore.trades.charging.PilotState;
import java.util.Optional;

/** What pilot and proximity of this inlet need, for whoever makes or tests the loom. */
final class LoomPage {

    private static final Column[] PARTS = {
        Column.text("contact", "Contact"),
        Column.text("where", "Where, and what for").atMost(58),
        Column.text("value", "Value"),
        Column.text("source", "Source").atMost(30),
        Column.tick("measured", "Measured")
    };

    private static final Column[] STATES = {
        Column.text("state", "State"),
        Column.text("volts", "Positive peak").in("V"),
        Column.text("says", "What it means").atMost(40),
        Column.blank("seen", "Seen").in("V")
    };

    private LoomPage() {}

    static Optional<PageBuilder> of(Charging charging, String footer) {
        InletWiring inlet = charging.fitted().inlet();
        return inlet == null ? Optional.empty() : Optional.of(of(inlet.proximity(), footer));
    }

    private static PageBuilder of(ProximityKind kind, String footer) {
        PageBuilder page = Page.named("Inlet loom").footer(footer);
        page.title("Pilot and proximity of the inlet loom").add(parts(kind));
        page.heading("States of the pilot").add(states());
        ChargingCautions.loom(page);
        return page.signatures("Measured by");
    }

    private static TableBuilder parts(ProximityKind kind) {
        TableBuilder table = Table.named("loom").columns(PARTS);
        LoomPart.of(kind)
                .forEach(part -> table.row()
                        .put("contact", part.contact())
                        .put("where", part.where())
                        .put("value", part.value())
                        .put("source", part.source()));
        return table;
    }

    private static TableBuilder states() {
        TableBuilder table = Table.named("pilot-states").columns(STATES);
        for (PilotState state : PilotState.values()) {
            table.row()
                    .put("state", state.name())
                    .put("volts", (state.volts().signum() > 0 ? "+" : "") + state.volts())
                    .put("says", state.says());
        }
        return table;
    }
}
