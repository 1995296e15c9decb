package boltlore.trades.charging;

import boltlore.catalogue.InletWiring;
import boltlore.catalogue.ProximityKind;
import boltlore.catalogue.Workshop;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import java.util.List;
import java.util.Optional;

/** What pilot and proximity of this inlet need, for whoever makes or tests the loom. */
final class LoomPage {

    private static final TableSpec<LoomPart> PARTS = TableSpec.<LoomPart>named("loom")
            .text("contact", "Contact", LoomPart::contact)
            .text("where", "Where, and what for", 58, LoomPart::where)
            .text("value", "Value", LoomPart::value)
            .text("source", "Source", 30, LoomPart::source)
            .box(Column.tick("measured", "Measured"));
    private static final TableSpec<PilotState> STATES = TableSpec.<PilotState>named("pilot-states")
            .text("state", "State", PilotState::name)
            .text("volts", "Positive peak (V)", state -> (state.volts().signum() > 0 ? "+" : "") + state.volts())
            .text("meaning", "What it means", 40, PilotState::says)
            .box(Column.blank("measured", "Measured").in("V"));

    private LoomPage() {}

    static Optional<PageBuilder> compose(Charging charging, Workshop workshop, String footer) {
        InletWiring inlet = charging.fitted().inlet();
        return inlet == null ? Optional.empty() : Optional.of(compose(inlet.proximity(), workshop, footer));
    }

    private static PageBuilder compose(ProximityKind kind, Workshop workshop, String footer) {
        PageBuilder page = Page.named("Inlet loom").footer(footer);
        page.title("Pilot and proximity of the inlet loom").add(PARTS.of(LoomPart.of(kind)));
        page.heading("States of the pilot").add(STATES.of(List.of(PilotState.values())));
        CautionNotes.always(page, "inlet-loom", workshop, workshop.language());
        return page.signatures("Measured by");
    }
}
