package boltlore.catalogue.json;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Flow;
import boltlore.json.Allowed;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** families/…/fits.json: energy paths and circuits, boxes and their contents, shafts, quantities that follow, earth straps. */
final class FitsFile {

    private static final Range EACH = Range.between(-10_000, 10_000);
    private static final Range BORE = Range.above(0, 1_000);
    private static final int LONGEST_MM = 100_000;
    private static final int MOST_LAYERS = 20;
    private static final int FEWEST_STEPS = 2;
    private static final KeyRule COOLANT_IS_FILLED = new KeyRule.With("flow", "coolant", "fill");
    private static final KeyRule FILL_AND_BLEED = new KeyRule.Needs("fill", "bleed");
    private static final KeyRule BLEED_AND_FILL = new KeyRule.Needs("bleed", "fill");
    private static final KeyRule BORE_OF_JOINS = new KeyRule.Needs("boreMm", "joins");

    private enum Turned {
        UPRIGHT,
        ANY
    }

    private static final Allowed<Turned> TURNED = Allowed.of(Turned.values());

    private final Reading reading;
    private final ConditionReading conditions;
    private final ConditionReading overOptions;

    FitsFile(Reading reading) {
        this.reading = reading;
        this.conditions = new ConditionReading(reading, ConditionReading.Over.OPTIONS_AND_POSITIONS);
        this.overOptions = new ConditionReading(reading, ConditionReading.Over.OPTIONS);
    }

    Fits read(ObjectReader reader) {
        List<Fits.Run> paths = reader.findObjects("paths", each -> run(each, "path", false, null));
        List<Fits.Run> circuits = reader.findObjects("circuits", this::circuit);
        return new Fits(
                Stream.concat(paths.stream(), circuits.stream()).toList(),
                reader.findObjects("boxes", this::box),
                reader.findObjects("shafts", this::shaft),
                reader.findObjects("quantities", this::follows),
                reader.findObjects("straps", this::strap));
    }

    private Fits.Run circuit(ObjectReader reader) {
        String fill = reading.findMentioned(reader, "fill", Kind.POSITION);
        String bleed = reading.findMentioned(reader, "bleed", Kind.POSITION);
        if (reader.breaks(COOLANT_IS_FILLED) || reader.breaks(FILL_AND_BLEED) || reader.breaks(BLEED_AND_FILL)) {
            reader.fault(
                    "not both 'fill' and 'bleed'",
                    "where the circuit is filled, and where its air gets out",
                    "Name both positions; a circuit of refrigerant has neither.");
        }
        Fits.Filling filling = fill == null || bleed == null
                ? null
                : new Fits.Filling(new PositionName(fill), new PositionName(bleed));
        return run(reader, "circuit", true, filling);
    }

    private Fits.Run run(ObjectReader reader, String called, boolean closed, Fits.@Nullable Filling filling) {
        String name = reading.named(reader, called, Kind.RUN);
        Flow flow = reader.oneOf("flow", FitReading.FLOWS);
        Condition required = conditions.orAlways(reader, "required");
        List<Fits.Step> steps = reader.objects("through", this::step);
        Fits.Run run = new Fits.Run(name, flow, required, closed, filling, steps);
        if (reader.sound()) {
            ends(run, reader);
        }
        return reading.sources().put(run, reader.spot());
    }

    private Fits.Step step(ObjectReader reader) {
        return new Fits.Step(
                position(reader, "position"),
                reader.findText("in", TextShape.NAME).orElse(""),
                reader.findText("out", TextShape.NAME).orElse(""),
                conditions.orAlways(reader, "when"));
    }

    /** A path comes in nowhere at its first step and leaves nowhere at its last; all else has both ports. */
    private static void ends(Fits.Run run, ObjectReader reader) {
        int last = run.steps().size() - 1;
        if (last + 1 < FEWEST_STEPS) {
            reader.faultAt("through", "fewer than two steps", "where it begins, and where it goes on", "");
        }
        for (int at = 0; at <= last; at++) {
            Fits.Step step = run.steps().get(at);
            boolean comesIn = run.closed() || at > 0;
            boolean goesOn = run.closed() || at < last;
            if (step.in().isEmpty() == comesIn || step.out().isEmpty() == goesOn) {
                reader.faultAt(
                        "through",
                        "at '" + step.position() + "' " + ports(step),
                        comesIn && goesOn ? "'in' and 'out'" : comesIn ? "'in' alone" : "'out' alone",
                        "Name the ports of the part there at which it comes in and goes on.");
            }
        }
    }

    private static String ports(Fits.Step step) {
        return (step.in().isEmpty() ? "no 'in'" : "'in'") + " and "
                + (step.out().isEmpty() ? "no 'out'" : "'out'");
    }

    private Fits.Box box(ObjectReader reader) {
        return new Fits.Box(
                position(reader, "box"),
                position(reader, "holds"),
                reader.whole("layers", 1, MOST_LAYERS),
                reader.whole("gapMm", 0, LONGEST_MM),
                reader.whole("layerMm", 0, LONGEST_MM),
                reader.oneOf("turned", TURNED) == Turned.UPRIGHT);
    }

    private Fits.Shaft shaft(ObjectReader reader) {
        return new Fits.Shaft(
                position(reader, "shaft"),
                reader.objects("from", this::flange),
                reader.objects("to", this::flange),
                reader.whole("slideMm", 0, LONGEST_MM));
    }

    private Fits.Flange flange(ObjectReader reader) {
        return new Fits.Flange(
                overOptions.orAlways(reader, "when"), reader.whole("stationMm", -LONGEST_MM, LONGEST_MM));
    }

    private Fits.Strap strap(ObjectReader reader) {
        String to = reading.findMentioned(reader, "to", Kind.POSITION);
        PositionName from = position(reader, "from");
        return new Fits.Strap(
                position(reader, "strap"),
                overOptions.orAlways(reader, "when"),
                to == null ? List.of(from) : List.of(from, new PositionName(to)));
    }

    private Fits.Follows follows(ObjectReader reader) {
        return new Fits.Follows(
                reading.named(reader, "quantity", Kind.FOLLOWS),
                reader.text("because"),
                reader.truth("safety", false),
                reader.objects("of", this::share),
                reader.objects("from", this::share));
    }

    private Fits.Share share(ObjectReader reader) {
        reader.oneWay("position", "metresAt", "holesAt holeMm", "part", "joins");
        Fits.Share share = new Fits.Share(counted(reader), reader.decimal("each", EACH));
        if (reader.breaks(BORE_OF_JOINS)) {
            reader.faultAt("boreMm", "'boreMm' without 'joins'", "the bore of what is joined", "Remove it.");
        }
        return share;
    }

    private Fits.Counted counted(ObjectReader reader) {
        String pieces = reading.findMentioned(reader, "position", Kind.POSITION);
        String metres = reading.findMentioned(reader, "metresAt", Kind.POSITION);
        String holes = reading.findMentioned(reader, "holesAt", Kind.POSITION);
        BigDecimal hole = reader.findDecimal("holeMm", BORE);
        String part = reading.findMentioned(reader, "part", Kind.PART);
        String joins = reader.findText("joins", TextShape.NAME).orElse("");
        BigDecimal bore = reader.findDecimal("boreMm", BORE);
        if (pieces != null) {
            return new Fits.Pieces(new PositionName(pieces));
        }
        if (metres != null) {
            return new Fits.Metres(new PositionName(metres));
        }
        if (holes != null) {
            return new Fits.Holes(new PositionName(holes), hole == null ? BigDecimal.ONE : hole);
        }
        return part != null ? new Fits.PartsInKit(new PartNumber(part)) : new Fits.JoinsMade(joins, bore);
    }

    private PositionName position(ObjectReader reader, String key) {
        return new PositionName(reading.mentioned(reader, key, Kind.POSITION));
    }
}
