package boltlore.catalogue.json;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Branch.FedBy;
import boltlore.catalogue.Branch.Protection;
import boltlore.catalogue.Driving;
import boltlore.catalogue.Feeds;
import boltlore.json.Allowed;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Cables with what feeds them, what they feed, and what protects them. */
final class BranchReading {

    /** What may feed a branch, by its written name; volts and phases belong to the last two. */
    private enum Source {
        PACK("pack"),
        LOW_VOLTAGE("low-voltage"),
        MAINS("mains"),
        CHARGER("charger");

        private final String written;

        Source(String written) {
            this.written = written;
        }

        FedBy at(BigDecimal volts, int phases) {
            return switch (this) {
                case PACK -> new FedBy.Pack();
                case LOW_VOLTAGE -> new FedBy.LowVoltage();
                case MAINS -> new FedBy.Mains(volts, phases);
                case CHARGER -> new FedBy.Charger(volts);
            };
        }
    }

    private static final Allowed<Source> SOURCES = Allowed.of(Source.values(), source -> source.written);
    private static final Allowed<Feeds.Chosen> CHOSEN = Allowed.of(Feeds.Chosen.values(), Feeds.Chosen::written);
    private static final KeyRule SOME_LOAD = new KeyRule.OneWay("loadAmps", "feeds", "loadAmps feeds");
    private static final KeyRule WITH_THEIR_SOURCE = new KeyRule.Needs("volts", "fedBy");
    private static final KeyRule FUSE_THERE = new KeyRule.Needs("fuseAfterMm", "fuse");
    private static final List<KeyRule.Needs> BESIDE = List.of(
            new KeyRule.Needs("continuousWatts", "watts"),
            new KeyRule.Needs("atVolts", "watts"),
            new KeyRule.Needs("share", "branches"));
    private static final List<KeyRule> VOLTS = List.of(
            new KeyRule.With("fedBy", "mains", "volts"),
            new KeyRule.With("fedBy", "charger", "volts"),
            new KeyRule.Without("fedBy", "pack", "volts"),
            new KeyRule.Without("fedBy", "low-voltage", "volts"),
            WITH_THEIR_SOURCE);

    private static final Range SHARE = Range.above(0, 1);
    private static final Range WATTS = Range.above(0, 2_000_000);
    private static final int MOST_MM = 10_000;

    private final Reading reading;
    private final ConditionReading overOptions;
    private final List<Driving.DriveUnit> driveUnits;

    BranchReading(Reading reading, ConditionReading overOptions, List<Driving.DriveUnit> driveUnits) {
        this.reading = reading;
        this.overOptions = overOptions;
        this.driveUnits = driveUnits;
    }

    Branch branch(ObjectReader reader) {
        Branch branch = new Branch(
                reading.named(reader, "branch", Kind.BRANCH),
                reader.text("says"),
                overOptions.orAlways(reader, "when"),
                new PositionName(reading.mentioned(reader, "position", Kind.POSITION)),
                fedBy(reader),
                reader.findDecimal("loadAmps", PackReading.AMPS),
                reader.findObject("feeds", this::feeds).orElse(null),
                protection(reader),
                new PartNumber(reading.mentioned(reader, "cable", Kind.CABLE)),
                shareOrAll(reader, "derating"),
                Reading.textOrNone(reader, "because"));
        rules(reader);
        return branch;
    }

    private static void rules(ObjectReader reader) {
        if (reader.breaks(SOME_LOAD)) {
            reader.fault(
                    "neither 'loadAmps' nor 'feeds'",
                    "what the branch feeds, or its load in A",
                    "Add 'feeds': its current is then worked out from the empty pack.");
        }
        if (VOLTS.stream().anyMatch(reader::breaks)) {
            reader.fault(
                    reader.has("volts") ? "'volts' that are not of the mains or the charger" : "no 'volts'",
                    "'volts' exactly where \"fedBy\" is mains or charger; pack and 12 V battery have their own",
                    "Say what feeds the branch.");
        }
        if (reader.breaks(FUSE_THERE)) {
            reader.faultAt("fuseAfterMm", "where a fuse is, and none", "'fuse' beside it", "Add 'fuse'.");
        }
    }

    private static FedBy fedBy(ObjectReader reader) {
        Source source = reader.findOneOf("fedBy", SOURCES);
        BigDecimal volts = reader.findDecimal("volts", PackReading.VOLTS);
        Integer phases = reader.findWhole("phases", 1, 3);
        if (phases != null) {
            oneOrThree(reader, phases);
        }
        return (source == null ? Source.PACK : source).at(orOne(volts), phases == null ? 1 : phases);
    }

    static void oneOrThree(ObjectReader reader, int phases) {
        if (phases == 2) {
            reader.faultAt("phases", "2", "1 or 3", "");
        }
    }

    private Protection protection(ObjectReader reader) {
        String fuse = reading.findMentioned(reader, "fuse", Kind.FUSE);
        Integer afterMm = reader.findWhole("fuseAfterMm", 0, MOST_MM);
        return new Protection(
                fuse == null ? null : new Protection.Fuse(fuse, afterMm),
                reader.findObject("farEnd", this::farEnd).orElse(null),
                Reading.textOrNone(reader, "limitedBy"));
    }

    private Protection.FarEnd farEnd(ObjectReader reader) {
        return new Protection.FarEnd(
                reading.findMentioned(reader, "fuse", Kind.FUSE), Reading.textOrNone(reader, "limitedBy"));
    }

    private Feeds feeds(ObjectReader reader) {
        reader.oneWay("watts efficiencyPercent", "driveUnit", "branches", "chosen");
        Feeds.Device device = device(reader);
        List<String> names = reading.findAllMentioned(reader, "branches", Kind.BRANCH);
        BigDecimal share = shareOrAll(reader, "share");
        Feeds.Chosen chosen = reader.findOneOf("chosen", CHOSEN);
        for (KeyRule.Needs rule : BESIDE) {
            if (reader.breaks(rule)) {
                String other = String.join(", ", rule.others());
                reader.faultAt(
                        rule.key(), "'" + rule.key() + "' without '" + other + "'", "'" + other + "' beside it", "");
            }
        }
        if (reader.has("branches")) {
            return new Feeds.Branches(names, share);
        }
        return chosen == null ? device : chosen;
    }

    private Feeds.Device device(ObjectReader reader) {
        Feeds.Device driven = driven(reader);
        if (driven != null) {
            return driven;
        }
        BigDecimal watts = orOne(reader.findDecimal("watts", WATTS));
        BigDecimal continuous = reader.findDecimal("continuousWatts", WATTS);
        if (continuous != null && reader.has("watts") && continuous.compareTo(watts) > 0) {
            reader.faultAt(
                    "continuousWatts", continuous + " W", "at most the " + watts + " W of 'watts'", "Swap them.");
        }
        return new Feeds.Device(
                watts,
                continuous == null ? watts : continuous,
                orOne(reader.findDecimal("efficiencyPercent", PackReading.PERCENT)),
                reader.findDecimal("atVolts", PackReading.VOLTS));
    }

    /** What a drive unit takes, from its curve and efficiency in driving.json: one figure for both files. */
    private Feeds.@Nullable Device driven(ObjectReader reader) {
        String part = reading.findMentioned(reader, "driveUnit", Kind.PART);
        if (part == null) {
            return null;
        }
        Driving.DriveUnit unit = driveUnits.stream()
                .filter(each -> each.part().text().equals(part))
                .findFirst()
                .orElse(null);
        if (unit == null) {
            reader.faultAt(
                    "driveUnit",
                    "drive unit '" + part + "'",
                    "a drive unit with its curve in driving.json",
                    "Add it there, or say 'watts' here.");
            return new Feeds.Device(BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE, null);
        }
        return new Feeds.Device(unit.peakWatts(), unit.continuousWatts(), unit.motorPercent(), null);
    }

    private static BigDecimal orOne(@Nullable BigDecimal number) {
        return number == null ? BigDecimal.ONE : number;
    }

    static BigDecimal shareOrAll(ObjectReader reader, String key) {
        BigDecimal share = reader.findDecimal(key, SHARE);
        return share == null ? BigDecimal.ONE : share;
    }
}
