package boltlore.catalogue.json;

import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Flow;
import boltlore.catalogue.Geometry;
import boltlore.catalogue.Port;
import boltlore.catalogue.ThreadName;
import boltlore.json.Allowed;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Reads of a part what decides on whether it fits: what may be joined to its ports, its size, its mirror image. */
final class FitReading {

    static final Allowed<Flow> FLOWS = Allowed.of(Flow.values(), Flow::written);

    private static final Allowed<Port.Half> HALVES = Allowed.of(Port.Half.values());
    private static final Allowed<Port.Way> WAYS = Allowed.of(Port.Way.values());
    private static final KeyRule SOMETHING_SAID = new KeyRule.OneWay("flow", "mates", "flow mates");
    private static final Range BORE = Range.above(0, 500);
    private static final Range TORQUE = Range.above(0, 1_000);
    private static final KeyRule TORQUE_WHOLE = new KeyRule.OneWay("thread", "thread torqueNm securedBy source");
    private static final int ONE_PHASE = 1;
    private static final int THREE_PHASES = 3;

    static final TextShape THREAD = new TextShape(
            text -> ThreadName.of(text).isPresent(),
            ThreadName.EXPECTED + ", whose threads to the inch are those of its size",
            "^(M[0-9.]+(x[0-9.]+)?|#?[0-9/ -]+-[0-9.]+( (UNC|UNF|NPT|BSPP))?|[0-9/ ]+ BSPP|(G|R|Rp|Rc) ?[0-9][0-9/ ]*( [AB])?)$",
            24);

    /** All of these mean nothing without a flow. */
    private static final List<String> OF_A_FLOW = List.of("half", "boreMm", "volts", "amps", "phases", "thread", "way");

    private FitReading() {}

    /** What may be joined to a port; null where it says only what mates with it. */
    static Port.@Nullable Joint joint(ObjectReader reader) {
        Flow flow = reader.findOneOf("flow", FLOWS);
        Port.Half half = reader.findOneOf("half", HALVES);
        Port.Joint joint = new Port.Joint(
                flow == null ? Flow.HV_DC : flow,
                half == null ? Port.Half.MALE : half,
                reader.findDecimal("boreMm", BORE),
                reader.findDecimal("volts", PackReading.VOLTS),
                reader.findDecimal("amps", PackReading.AMPS),
                reader.findWhole("phases", ONE_PHASE, THREE_PHASES),
                reader.findText("thread", THREAD).flatMap(ThreadName::of).orElse(null),
                reader.findOneOf("way", WAYS));
        if (reader.breaks(SOMETHING_SAID)) {
            reader.fault(
                    "neither 'flow' nor 'mates'",
                    "what flows through it, or the parts that mate with it",
                    "Add one of them, or both.");
        }
        if (reader.breaks(new KeyRule.Needs("flow", "half"))) {
            reader.faultAt("flow", "'flow' alone", "'flow' with 'half': male or female", "Add 'half'.");
        }
        for (String key : OF_A_FLOW) {
            if (reader.breaks(new KeyRule.Needs(key, "flow"))) {
                reader.faultAt(key, "'" + key + "' without 'flow'", "'" + key + "' of what flows", "Add 'flow'.");
            }
        }
        return flow == null ? null : joint;
    }

    /** A stud says its torque, the hole of a lug for it its thread alone. */
    static Port.@Nullable Bolted bolted(ObjectReader reader) {
        String thread = reader.text("thread", THREAD);
        BigDecimal torque = reader.findDecimal("torqueNm", TORQUE);
        String securedBy = reader.findText("securedBy").orElse("");
        String source = reader.findText("source").orElse("");
        if (reader.breaks(TORQUE_WHOLE)) {
            reader.fault(
                    "a torque without all that goes with it, or that without a torque",
                    "'torqueNm', 'securedBy' and 'source' of a stud, or none of them for the hole of a lug",
                    "Take them from the maker's data sheet.");
        }
        return ThreadName.of(thread)
                .map(known -> new Port.Bolted(known, thread, torque, securedBy, source))
                .orElse(null);
    }

    static Geometry geometry(Reading reading, ObjectReader reader) {
        EnvelopeMm size = reader.findObject("sizeMm", CoatingFile::sizeMm).orElse(null);
        EnvelopeMm inner = reader.findObject("innerMm", CoatingFile::sizeMm).orElse(null);
        String mirror = reading.findMentioned(reader, "mirrorOf", Kind.PART);
        SortedMap<OptionName, SortedSet<String>> madeFor = new TreeMap<>();
        reader.findObjects(
                "madeFor",
                each -> madeFor.computeIfAbsent(
                                new OptionName(each.text("option", TextShape.NAME)), option -> new TreeSet<>())
                        .addAll(each.texts("values", TextShape.NAME, (value, spot) -> value)));
        return size == null && inner == null && mirror == null && madeFor.isEmpty()
                ? Geometry.NONE
                : new Geometry(size, inner, mirror == null ? null : new PartNumber(mirror), madeFor);
    }
}
