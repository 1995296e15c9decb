package boltlore.trades.charging;

import boltlore.choices.Choices;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import java.util.Optional;

/** The figure that belongs to a finding about charging or export, as the end of its sentence. */
public final class PowerNote {

    private PowerNote() {}

    /** 'effective 3.7 kW (1 phase × 230 V × 16 A)'; empty for every other finding and where facts are missing. */
    public static Optional<String> of(Finding finding, Choices choices) {
        if (finding.kind() == FindingKind.CHARGER_PHASES_ABOVE_INLET
                || finding.kind() == FindingKind.CHARGER_PHASES_ABOVE_SUPPLY) {
            return ChosenPower.charging(choices).map(PowerNote::effective);
        }
        return finding.kind() == FindingKind.EXPORT_ABOVE_RATING
                ? ChosenPower.outlet(choices).map(power -> "the outlet gives " + power.says())
                : Optional.empty();
    }

    private static String effective(Power power) {
        return "effective " + power.says();
    }
}
