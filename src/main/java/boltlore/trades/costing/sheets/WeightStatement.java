package boltlore.trades.costing.sheets;

import boltlore.catalogue.Chassis;
import boltlore.catalogue.MassLimit;
import boltlore.report.Phrases;
import boltlore.trades.weighing.Growth;
import boltlore.trades.weighing.OnAxles;
import boltlore.trades.weighing.Weighing;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What the conversion does to the vehicle's weight, for the customer. */
final class WeightStatement {

    private final Phrases phrases;
    private final String country;

    private WeightStatement(Phrases phrases, String country) {
        this.phrases = phrases;
        this.country = country;
    }

    /** @param country of the customer, or empty: a rule of another country is not told as his market's */
    static String say(Weighing weighing, String country, Phrases phrases) {
        WeightStatement statement = new WeightStatement(phrases, country);
        Growth growth = weighing.growth();
        if (growth == null) {
            return phrases.say("kitOnly", statement.kg(weighing.addedKg()));
        }
        String heavy = weighing.stops() ? " " + phrases.say("tooHeavy") : "";
        return statement.mass(growth) + statement.market(growth) + " " + statement.axles(weighing.onAxles()) + heavy;
    }

    private String mass(Growth growth) {
        BigDecimal change = growth.afterKg().subtract(growth.beforeKg());
        return phrases.say(
                "mass",
                kg(growth.beforeKg()),
                kg(growth.afterKg()),
                kg(change.abs()),
                phrases.number(growth.changePercent().abs(), 1),
                phrases.say(change.signum() < 0 ? "lighter" : "heavier"));
    }

    /** Where the market's limit is exceeded, or so near that the calculation cannot tell; else nothing, not even a blank. */
    private String market(Growth growth) {
        MassLimit limit = growth.limit();
        boolean above = growth.overKg().signum() > 0;
        if (limit == null || !limit.holdsIn(country) || !(above || growth.undecided())) {
            return "";
        }
        return " "
                + phrases.say(
                        "marketLimit",
                        phrases.number(limit.mostPercent()),
                        phrases.number(growth.afterKg().subtract(growth.overKg()), 1),
                        phrases.number(growth.overKg().abs(), 1),
                        phrases.say(above ? "limitAbove" : "limitBelow"));
    }

    private String axles(@Nullable OnAxles onAxles) {
        if (onAxles == null) {
            return phrases.say("axlesUnknown");
        }
        Chassis chassis = onAxles.chassis();
        return phrases.say(
                "axles",
                kg(onAxles.converted().frontKg()),
                kg(onAxles.converted().rearKg()),
                kg(chassis.frontLimitKg()),
                kg(chassis.rearLimitKg()),
                kg(chassis.grossKg()));
    }

    private String kg(BigDecimal kg) {
        return phrases.number(kg, 0);
    }
}
