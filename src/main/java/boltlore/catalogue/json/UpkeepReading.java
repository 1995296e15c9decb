package boltlore.catalogue.json;

import boltlore.catalogue.Document;
import boltlore.catalogue.Upkeep;
import boltlore.json.Allowed;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import boltlore.measure.Wording;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads a part's documents, its successor, its alternates and the engineer's notes; positions have documents too. */
final class UpkeepReading {

    private static final Allowed<Document.Kind> KINDS = Allowed.of(Document.Kind.values(), Document.Kind::written);
    private static final KeyRule SOMEWHERE = new KeyRule.OneWay("file", "number", "file number");
    private static final KeyRule ISSUE_OF_A_DRAWING = new KeyRule.With("kind", "drawing", "issue");

    private static final String DONOR = "donor";
    private static final KeyRule INSPECTED = new KeyRule.With("source", DONOR, "inspect");
    private static final KeyRule NOT_MADE = new KeyRule.Without("source", "make", "inspect");
    private static final KeyRule NOT_BOUGHT = new KeyRule.Without("source", "buy", "inspect");
    private static final List<String> NEVER_OF_THE_DONOR = List.of(
            "cost",
            "offers",
            "massKg",
            "supplier",
            "orderCode",
            "packOf",
            "minimumOrder",
            "leadDays",
            "scrapPercent",
            "bin",
            "contains",
            "cut",
            "blank",
            "operations",
            "coat",
            "customs",
            "transport",
            "coreCredit");

    private final Reading reading;

    UpkeepReading(Reading reading) {
        this.reading = reading;
    }

    Upkeep read(ObjectReader reader) {
        return new Upkeep(
                documents(reader),
                reader.findObject("replacedBy", this::successor).orElse(null),
                reader.findSomeObjects("alternates", this::alternate),
                reader.findText("notes").orElse(""),
                ChangesReading.ofPart(reader),
                reader.findDecimal("coreCredit", Range.POSITIVE),
                inspect(reader));
    }

    /** The base vehicle's own part is looked at before it goes back in, and is nobody's to buy, make, store, coat or ship. */
    private @Nullable Wording inspect(ObjectReader reader) {
        Wording inspect = reading.findWording(reader, "inspect").orElse(null);
        if (reader.breaks(INSPECTED)) {
            reader.faultAt(
                    "source",
                    "a part of the base vehicle without 'inspect'",
                    "what is looked at before it goes back in, and what ends its use",
                    "Add 'inspect'.");
        }
        if (reader.breaks(NOT_MADE) || reader.breaks(NOT_BOUGHT)) {
            reader.faultAt(
                    "inspect",
                    "'inspect' on a part that is supplied",
                    "'inspect' beside \"source\": \"donor\"",
                    "Remove it.");
        }
        for (String key : NEVER_OF_THE_DONOR) {
            if (reader.breaks(new KeyRule.Without("source", DONOR, key))) {
                reader.faultAt(
                        key,
                        "'" + key + "' on a part of the base vehicle",
                        "'" + key + "' on parts that are supplied",
                        "Remove it.");
            }
        }
        return inspect;
    }

    List<Document> documents(ObjectReader reader) {
        return reader.findSomeObjects("documents", this::document);
    }

    private Document document(ObjectReader reader) {
        Document document = new Document(
                reader.oneOf("kind", KINDS),
                reader.findText("file", Shapes.FILE).orElse(null),
                reader.findText("number", TextShape.LINE).orElse(null),
                reader.findText("issue", TextShape.LINE).orElse(null),
                reading.wording(reader, "says"));
        if (reader.breaks(SOMEWHERE)) {
            reader.fault(
                    "neither 'file' nor 'number'",
                    "where it lies: a 'file' within the catalogue folder, or the 'number' it is filed under",
                    "Add one of them, or both.");
        }
        if (reader.breaks(ISSUE_OF_A_DRAWING)) {
            reader.fault("a drawing without 'issue'", "the issue of the drawing", "Add 'issue'.");
        }
        return reading.sources().put(document, reader.spot("file"));
    }

    private Upkeep.Successor successor(ObjectReader reader) {
        Upkeep.Successor successor = new Upkeep.Successor(
                reading.part(reader, "part"),
                reader.findText("from", TextShape.LINE).orElse(null),
                reader.truth("serviceOnly", false),
                EffectivityReading.ofSuccessor(reader));
        return reading.sources().put(successor, reader.spot("part"));
    }

    private Upkeep.Alternate alternate(ObjectReader reader) {
        Upkeep.Alternate alternate = new Upkeep.Alternate(reading.part(reader, "part"), reader.text("because"));
        return reading.sources().put(alternate, reader.spot("part"));
    }
}
