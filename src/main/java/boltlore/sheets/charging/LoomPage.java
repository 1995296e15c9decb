package boltlore.sheets.charging;

import boltlore.catalogue.InletWiring;
import boltlore.catalogue.ProximityKind;
import boltlore.charging.Charging;
import boltlore.charging.LoomPart;
import boltlore.charging.PilotState;
import boltlore.sheets.Column;
import boltlore.sheets.Page;
import boltlore.sheets.PageBuilder;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
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
