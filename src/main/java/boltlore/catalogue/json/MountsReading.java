package boltlore.catalogue.json;

import boltlore.catalogue.Mounting;
import boltlore.catalogue.Mounting.Bolts;
import boltlore.catalogue.Mounting.Mount;
import boltlore.catalogue.Mounting.Shock;
import boltlore.catalogue.Mounting.Welds;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.SourceLocation;
import boltlore.measure.PositionName;
import java.util.Objects;

/** 'shocks' and 'mounts' of families/…/driving.json. */
final class MountsReading {

    private static final Range TIMES = Range.between(0, 100);
    private static final Range MPA = Range.above(0, 2_000);
    private static final int MOST_BOLTS = 100;
    private static final int MOST_ALIKE = 20;

    private final Reading reading;
    private final ConditionReading overOptions;

    MountsReading(Reading reading, ConditionReading overOptions) {
        this.reading = reading;
        this.overOptions = overOptions;
    }

    Mounting read(ObjectReader reader) {
        return new Mounting(reader.findObjects("shocks", this::shock), reader.findObjects("mounts", this::mount));
    }

    private Shock shock(ObjectReader reader) {
        return new Shock(
                reading.named(reader, "shock", Kind.SHOCK),
                reader.text("says"),
                reader.decimal("ahead", TIMES),
                reader.decimal("across", TIMES),
                reader.decimal("down", TIMES),
                reader.truth("torque", false));
    }

    private Mount mount(ObjectReader reader) {
        if (!reader.has("bolts") && !reader.has("welds")) {
            reader.fault("neither 'bolts' nor 'welds'", "at least one of them", "Say what holds the mount.");
        }
        return new Mount(
                reading.named(reader, "mount", Kind.MOUNT),
                reader.text("says"),
                overOptions.orAlways(reader, "when"),
                reader.texts("carries", Kind.POSITION.shape(), this::position),
                reader.decimal("share", Range.above(0, 1)),
                Objects.requireNonNullElse(reader.findWhole("alike", 1, MOST_ALIKE), 1),
                reader.findDecimal("leverMm", Range.above(0, 5_000)),
                reader.findObject("bolts", this::bolts).orElse(null),
                reader.findObject("welds", MountsReading::welds).orElse(null),
                reader.text("source"));
    }

    private PositionName position(String name, SourceLocation spot) {
        reading.mention(Kind.POSITION, name, spot);
        return new PositionName(name);
    }

    private Bolts bolts(ObjectReader reader) {
        return new Bolts(
                reader.findTexts("at", Kind.POSITION.shape(), this::position),
                reader.whole("count", 1, MOST_BOLTS),
                reader.decimal("stressAreaMm2", Range.above(0, 5_000)),
                reader.decimal("ultimateMpa", MPA));
    }

    private static Welds welds(ObjectReader reader) {
        return new Welds(
                reader.decimal("throatMm", Range.above(0, 50)),
                reader.decimal("lengthMm", Range.above(0, 10_000)),
                reader.decimal("ultimateMpa", MPA),
                reader.decimal("correlation", Range.above(0, 1)));
    }
}
