package boltlore.trades.weighing.sheets;

import static boltlore.trades.weighing.sheets.Kilograms.kg;
import static boltlore.trades.weighing.sheets.Kilograms.mm;
import static boltlore.trades.weighing.sheets.Kilograms.number;
import static boltlore.trades.weighing.sheets.Kilograms.percent;

import boltlore.trades.weighing.CentreHeight;
import boltlore.trades.weighing.FrontShare;
import boltlore.trades.weighing.Growth;
import boltlore.trades.weighing.OnAxles;
import boltlore.trades.weighing.PayloadLeft;
import boltlore.trades.weighing.Weighing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a weighing comes to, a sentence each. */
public final class WeighWords {

    private WeighWords() {}

    /** Everything that was found, limits first, then what is missing. */
    public static List<Found> of(Weighing weighing) {
        List<Found> found = new ArrayList<>();
        LimitWords.of(weighing).forEach(says -> found.add(new Found("Limits", says)));
        Growth growth = weighing.growth();
        if (growth != null) {
            found.add(new Found("Mass", mass(growth)));
            limit(growth).ifPresent(says -> found.add(new Found("Market", says)));
        }
        OnAxles onAxles = weighing.onAxles();
        if (onAxles != null) {
            found.add(new Found("Centre of gravity", along(onAxles)));
            onAxles(weighing, onAxles, found);
        }
        weighing.missing().forEach(says -> found.add(new Found("Missing", says)));
        return List.copyOf(found);
    }

    /** Only what keeps the vehicle from being used like that; empty unless the weighing stops. */
    public static List<String> stopping(Weighing weighing) {
        Growth growth = weighing.growth();
        List<String> sentences = new ArrayList<>();
        OnAxles onAxles = weighing.onAxles();
        if (!weighing.exceeded().isEmpty() || (onAxles != null && onAxles.liftsOff())) {
            sentences.addAll(LimitWords.of(weighing));
        }
        if (growth != null && growth.exceeded()) {
            limit(growth).ifPresent(sentences::add);
        }
        return sentences;
    }

    private static void onAxles(Weighing weighing, OnAxles onAxles, List<Found> found) {
        CentreHeight height = onAxles.height();
        if (height != null) {
            found.add(new Found("Height", height(height)));
        }
        found.add(new Found("Front axle", share(onAxles.frontShare())));
        BatteryWords.of(weighing, onAxles).ifPresent(says -> found.add(new Found("Battery", says)));
        PayloadLeft payload = onAxles.payload();
        if (payload != null) {
            found.add(new Found("Payload", payload(payload)));
        }
    }

    private static String mass(Growth growth) {
        BigDecimal change = growth.afterKg().subtract(growth.beforeKg());
        String how = change.signum() < 0 ? "lighter" : "heavier";
        return "The vehicle becomes " + kg(change) + " ("
                + percent(growth.changePercent().abs()) + ") " + how + ": " + kg(growth.beforeKg()) + " before, "
                + kg(growth.afterKg()) + " after, nobody in it.";
    }

    private static Optional<String> limit(Growth growth) {
        if (growth.limit() == null) {
            return Optional.empty();
        }
        String most = number(growth.limit().mostPercent(), 2) + " % of the mass before conversion";
        String verdict = growth.exceeded()
                ? "That is " + kg(growth.overKg()) + " more than " + most + ". "
                : "That is " + kg(growth.overKg()) + " less than " + most + ", so it is within the limit. ";
        return Optional.of(verdict + growth.limit().because());
    }

    private static String along(OnAxles onAxles) {
        BigDecimal shift = onAxles.shiftMm();
        String how = shift.signum() < 0 ? " forward" : " rearward";
        return "The centre of gravity moves " + mm(shift) + how + ": from " + number(onAxles.centreBeforeMm(), 0)
                + " to " + number(onAxles.centreAfterMm(), 0) + " mm behind the front axle.";
    }

    private static String share(FrontShare share) {
        String least = percent(share.leastPercent())
                + (share.ofFamily() ? " that this family should have at least" : ", the workshop's own least value");
        return percent(share.percent()) + " of the mass is on the front axle, nobody in the vehicle, "
                + (share.tooLow() ? "less than the " : "against the ") + least
                + (share.tooLow() ? ": move mass forward, or have steering and brakes looked at." : ".");
    }

    private static String height(CentreHeight height) {
        BigDecimal change = height.changeMm();
        String how = change.signum() > 0 ? "rises" : "drops";
        String unknown = height.unknownKg().signum() == 0
                ? ""
                : " The height of " + kg(height.unknownKg()) + " is not known and left out.";
        return "The centre of gravity " + how + " by " + mm(change) + ", from " + number(height.beforeMm(), 0) + " to "
                + number(height.afterMm(), 0) + " mm above the road." + stability(height) + unknown;
    }

    private static String stability(CentreHeight height) {
        return CentreHeight.stability(height.tracksMm(), height.beforeMm())
                .flatMap(before -> CentreHeight.stability(height.tracksMm(), height.afterMm())
                        .map(after -> " Half the track over that height goes from " + number(before, 2) + " to "
                                + number(after, 2) + "; less means that it tips sooner."))
                .orElse("");
    }

    private static String payload(PayloadLeft payload) {
        return payload.kg().signum() < 0
                ? "Nothing may be loaded beside driver and passengers."
                : "Beside driver and passengers " + kg(payload.kg()) + " may be loaded, if it stands where the luggage"
                        + " does; then " + payload.first().says() + " is at its limit.";
    }
}
