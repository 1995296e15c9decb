package boltlore.trades.costing.sheets;

import boltlore.choices.Choices;
import boltlore.power.ChosenPower;
import boltlore.power.Power;
import boltlore.report.Phrases;

/** With what power the vehicle charges and feeds loads, for the customer. */
final class ChargingStatement {

    private ChargingStatement() {}

    static String of(Choices choices, Phrases phrases) {
        String charging = ChosenPower.charging(choices)
                .map(power -> charging(power, phrases))
                .orElseGet(() -> phrases.say("chargingUnknown"));
        return ChosenPower.exportKw(choices)
                .map(kw -> charging + " " + phrases.say("outlet", phrases.number(kw, 1)))
                .orElse(charging);
    }

    private static String charging(Power power, Phrases phrases) {
        return phrases.say(
                power.phases() == 1 ? "chargingOnePhase" : "chargingAt",
                phrases.number(power.kilowatts(), 1),
                String.valueOf(power.phases()),
                phrases.number(power.volts(), 0),
                phrases.number(power.amps(), 0));
    }
}
