package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Driving;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.Line;
import boltlore.logic.All;
import boltlore.measure.Digits;
import boltlore.proof.KitView;
import boltlore.proof.fits.BranchWays.Way;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What electrics.json says that a device takes or gives, against its rating in the part master or its curve in driving.json. */
record BranchPowers(KitView kit, List<Way> ways, Adder adder) {

    /** A motor's data sheet rounds its power: common practice, no source. */
    private static final BigDecimal ROUNDED = new BigDecimal("0.95");

    /** Takes a finding of a branch. */
    interface Adder {
        void add(FitFinding kind, Way way, String detail, Condition when, Object... named);
    }

    /** A motor draws what its torque takes at each speed, any other device what its maker rates it for. */
    void drawn(Way way, Feeds.Device device) {
        for (Line line : kit.kit().position(way.ends()).lines()) {
            Optional<Driving.DriveUnit> unit = kit.family().driving().driveUnits().stream()
                    .filter(each -> each.part().equals(line.part()))
                    .findFirst();
            BigDecimal rated = unit.map(Driving.DriveUnit::peakWatts).orElse(rated(line));
            if (rated != null) {
                figure(way, line, device, rated);
            }
            unit.map(Driving.DriveUnit::continuousWatts)
                    .filter(hours -> !about(device.continuousWatts(), hours))
                    .ifPresent(hours -> unlike(way, line, device.continuousWatts(), hours, 1));
        }
    }

    private @Nullable BigDecimal rated(Line line) {
        return kit.catalogue().part(line.part()).traits().ratedWatts();
    }

    /** Too little gives a cable and a fuse too small, too much a fuse that a fault may not blow. */
    private void figure(Way way, Line line, Feeds.Device device, BigDecimal rated) {
        if (device.watts().compareTo(rated.multiply(ROUNDED)) < 0) {
            power(way, device, line, rated);
        } else if (!about(device.watts(), rated)) {
            unlike(way, line, device.watts(), rated, 0);
        }
    }

    private static boolean about(BigDecimal said, BigDecimal rated) {
        return said.compareTo(rated.multiply(ROUNDED)) >= 0 && rated.compareTo(said.multiply(ROUNDED)) >= 0;
    }

    private void unlike(Way way, Line line, BigDecimal said, BigDecimal rated, int hours) {
        adder.add(
                FitFinding.BRANCH_POWER_UNLIKE,
                way,
                line.part().text() + (hours == 1 ? ", for hours" : ""),
                All.of(way.when(), kit.kit().in(line.name())),
                "watts",
                plain(said),
                "hours",
                hours,
                "part",
                BoxContents.named(kit, line.part()),
                "rated",
                new BigDecimal(Digits.upTo(rated, 0)));
    }

    /** What changes one current into another gives no more than it draws. */
    void behindDevice(Way way, Feeds.Device device) {
        for (Way out : ways) {
            if (out.flow() != way.flow()
                    && out.begins().equals(way.ends())
                    && out.branch().feeds() instanceof Feeds.Device given) {
                kit.kit().position(way.ends()).lines().forEach(line -> between(way, device, out, given, line));
            }
        }
    }

    private void between(Way way, Feeds.Device drawn, Way out, Feeds.Device given, Line line) {
        BigDecimal rated = rated(line);
        if (given.watts().compareTo(drawn.watts()) > 0) {
            power(way, drawn, line, given.watts());
        } else if (rated != null && !about(given.watts(), rated)) {
            unlike(out, line, given.watts(), rated, 0);
        }
    }

    private void power(Way way, Feeds.Device device, Line line, BigDecimal least) {
        adder.add(
                FitFinding.BRANCH_POWER_TOO_SMALL,
                way,
                line.part().text(),
                All.of(way.when(), kit.kit().in(line.name())),
                "watts",
                plain(device.watts()),
                "part",
                BoxContents.named(kit, line.part()),
                "least",
                new BigDecimal(Digits.upTo(least, 0)));
    }

    private static BigDecimal plain(BigDecimal figure) {
        return new BigDecimal(Digits.plain(figure));
    }
}
