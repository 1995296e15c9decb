package boltlore.trades.weighing.sheets;

import static boltlore.trades.weighing.sheets.Kilograms.kg;

import boltlore.trades.weighing.Added;
import boltlore.trades.weighing.Axle;
import boltlore.trades.weighing.Check;
import boltlore.trades.weighing.Heaviest;
import boltlore.trades.weighing.Limited;
import boltlore.trades.weighing.OnAxles;
import boltlore.trades.weighing.Weighing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Which limits are exceeded and by how much, and what weighs most there. */
final class LimitWords {

    private static final int NAMED = 3;

    private LimitWords() {}

    static List<String> of(Weighing weighing) {
        OnAxles onAxles = weighing.onAxles();
        if (onAxles == null) {
            return List.of();
        }
        List<String> sentences = new ArrayList<>();
        if (onAxles.liftsOff()) {
            sentences.add(
                    "More comes off an axle than it carries: look at the masses and stations of what is removed.");
        }
        weighing.exceeded().forEach(check -> sentences.add(exceeded(check, weighing, onAxles)));
        return weighing.exceeded().isEmpty() ? kept(onAxles, sentences) : sentences;
    }

    private static List<String> kept(OnAxles onAxles, List<String> sentences) {
        onAxles.checks().stream()
                .min(Comparator.comparing(Check::leftKg))
                .ifPresent(
                        check -> sentences.add("No axle and not the whole vehicle is above its limit. Least is left on "
                                + check.limited().says() + ": " + kg(check.leftKg()) + " (" + low(check) + ")."));
        return sentences;
    }

    private static String low(Check check) {
        String says = check.stand().says();
        return Character.toLowerCase(says.charAt(0)) + says.substring(1);
    }

    private static String exceeded(Check check, Weighing weighing, OnAxles onAxles) {
        String load = check.stand().says() + ": " + check.limited().says() + " carries " + kg(check.loadKg()) + ", "
                + kg(check.leftKg()) + " more than its limit of " + kg(check.limitKg()) + ".";
        return load + " Of the kit, most comes from " + most(check.limited(), weighing, onAxles) + ".";
    }

    private static String most(Limited limited, Weighing weighing, OnAxles onAxles) {
        int wheelbaseMm = onAxles.chassis().wheelbaseMm();
        if (limited == Limited.GROSS) {
            return Heaviest.of(weighing, NAMED).stream()
                    .map(each -> name(each) + " " + kg(each.massKg()))
                    .collect(Collectors.joining(", "));
        }
        Axle axle = limited == Limited.FRONT ? Axle.FRONT : Axle.REAR;
        return Heaviest.on(axle, weighing, wheelbaseMm, NAMED).stream()
                .map(each -> name(each) + " " + kg(each.on(wheelbaseMm).on(axle)))
                .collect(Collectors.joining(", "));
    }

    private static String name(Added added) {
        return added.item().part().name().english() + " (" + added.item().part().number() + ")";
    }
}
