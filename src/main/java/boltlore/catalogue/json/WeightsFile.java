package boltlore.catalogue.json;

import boltlore.catalogue.Aboard;
import boltlore.catalogue.Removed;
import boltlore.catalogue.Station;
import boltlore.catalogue.Weights;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** families/…/weights.json: what comes off the donor, who sits where, and the stations of the kit's positions. */
final class WeightsFile {

    /** No single thing that comes off or goes aboard weighs more than this many kg. */
    private static final Range KG = Range.above(0, 5_000);

    /** A concentrate that is less than a tenth of the mixture protects nothing: a slip of the pen. */
    private static final Range SHARE = Range.between(10, 100);

    private static final Allowed<Aboard.Who> WHO = Allowed.of(Aboard.Who.values());
    private static final int FAR_MM = 20_000;
    private static final int HIGHEST_MM = 4_000;

    private final Reading reading;
    private final ConditionReading overOptions;

    WeightsFile(Reading reading) {
        this.reading = reading;
        this.overOptions = new ConditionReading(reading, ConditionReading.Over.OPTIONS);
    }

    Weights read(ObjectReader reader) {
        Map<PositionName, Station> positions = new LinkedHashMap<>();
        Map<String, Station> subSystems = new LinkedHashMap<>();
        List<Removed> removed = reader.findObjects("removed", this::removed);
        List<Aboard> aboard = reader.findObjects("loads", this::aboard);
        reader.findObjects(
                "positions",
                each -> positions.put(
                        new PositionName(reading.namedOnce(each, "position", Kind.STATION, Kind.POSITION)),
                        station(each)));
        reader.findObjects(
                "subSystems",
                each -> subSystems.put(
                        reading.namedOnce(each, "subSystem", Kind.SUB_SYSTEM_STATION, Kind.SUB_SYSTEM), station(each)));
        Map<PartNumber, BigDecimal> concentrates = new LinkedHashMap<>();
        reader.findObjects(
                "concentrates",
                each -> concentrates.put(
                        reading.sources()
                                .put(
                                        new PartNumber(reading.namedOnce(each, "part", Kind.CONCENTRATE, Kind.PART)),
                                        each.spot("part")),
                        each.decimal("percent", SHARE)));
        return new Weights(
                removed,
                aboard,
                Collections.unmodifiableMap(positions),
                Collections.unmodifiableMap(subSystems),
                Collections.unmodifiableMap(concentrates));
    }

    private Removed removed(ObjectReader reader) {
        Removed removed = new Removed(
                reading.named(reader, "removed", Kind.REMOVED),
                reader.text("says"),
                reader.decimal("massKg", KG),
                station(reader),
                overOptions.orAlways(reader, "when"));
        return reading.sources().put(removed, reader.spot());
    }

    private Aboard aboard(ObjectReader reader) {
        Aboard aboard = new Aboard(
                reading.named(reader, "load", Kind.ABOARD),
                reader.text("says"),
                reader.oneOf("who", WHO),
                reader.decimal("massKg", KG),
                station(reader));
        return reading.sources().put(aboard, reader.spot());
    }

    private Station station(ObjectReader reader) {
        Station station =
                new Station(reader.whole("stationMm", -FAR_MM, FAR_MM), reader.findWhole("heightMm", 0, HIGHEST_MM));
        return reading.sources().put(station, reader.spot("stationMm"));
    }
}
