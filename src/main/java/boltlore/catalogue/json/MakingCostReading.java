package boltlore.catalogue.json;

import boltlore.catalogue.KitWork;
import boltlore.catalogue.LabourRates;
import boltlore.catalogue.Lots;
import boltlore.catalogue.MadeCost;
import boltlore.catalogue.OperationRate;
import boltlore.catalogue.Overhead;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** What making costs: hours, lots, overhead, and what the part master's costs hold of it already. */
final class MakingCostReading {

    /** No lot of a kit workshop is larger; more is a slip of the pen. */
    private static final int LARGEST_LOT = 100_000;

    private static final Range MINUTES = Range.between(0, 1_440);
    private static final Range OVERHEAD = Range.between(0, 2000);

    private final Reading reading;

    MakingCostReading(Reading reading) {
        this.reading = reading;
    }

    LabourRates labour(ObjectReader reader) {
        return new LabourRates(
                reader.decimal("perHour", Range.NOT_NEGATIVE),
                Keyed.by(reader.findObjects("operations", this::operation), OperationRate::operation));
    }

    private OperationRate operation(ObjectReader reader) {
        OperationRate rate = new OperationRate(
                reading.named(reader, "operation", Kind.PRICED_OPERATION),
                reader.decimal("perHour", Range.NOT_NEGATIVE),
                reader.truth("outside", false));
        return reading.sources().put(rate, reader.spot("operation"));
    }

    KitWork kitWork(ObjectReader reader) {
        Map<String, BigDecimal> stages = new LinkedHashMap<>();
        BigDecimal usual = reader.decimal("positionMin", MINUTES);
        reader.findObjects(
                "stages",
                each -> stages.put(
                        reading.namedOnce(each, "stage", Kind.WORKED_STAGE, Kind.STAGE),
                        each.decimal("positionMin", MINUTES)));
        return new KitWork(
                usual, Collections.unmodifiableMap(stages), reader.findDecimal("perHour", Range.NOT_NEGATIVE));
    }

    static MadeCost madeCost(ObjectReader reader) {
        BigDecimal labourPerHour = reader.decimal("labourPerHour", Range.NOT_NEGATIVE);
        return new MadeCost(labourPerHour, reader.whole("lot", 1, LARGEST_LOT));
    }

    Lots lots(ObjectReader reader) {
        Map<PartNumber, Integer> byPart = new LinkedHashMap<>();
        int usual = reader.whole("default", 1, LARGEST_LOT);
        reader.findObjects(
                "parts",
                each -> byPart.put(
                        new PartNumber(reading.namedOnce(each, "part", Kind.PART_WITH_LOT, Kind.PART)),
                        each.whole("lot", 1, LARGEST_LOT)));
        return new Lots(usual, Collections.unmodifiableMap(byPart));
    }

    static Overhead overhead(ObjectReader reader) {
        return new Overhead(reader.decimal("onLabourPercent", OVERHEAD), reader.decimal("onMaterialPercent", OVERHEAD));
    }
}
