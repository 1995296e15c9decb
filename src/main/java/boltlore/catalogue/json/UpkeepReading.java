package boltlore.catalogue.json;

import boltlore.catalogue.Document;
import boltlore.catalogue.Upkeep;
import boltlore.json.Allowed;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.util.List;

/** Reads a part's documents, its successor and its alternates; positions have documents too. */
final class UpkeepReading {

    private static final Allowed<Document.Kind> KINDS = Allowed.of(Document.Kind.values(), Document.Kind::written);
    private static final KeyRule SOMEWHERE = new KeyRule.OneWay("file", "number", "file number");
    private static final KeyRule ISSUE_OF_A_DRAWING = new KeyRule.With("kind", "drawing", "issue");

    private final Reading reading;

    UpkeepReading(Reading reading) {
        this.reading = reading;
    }

    Upkeep read(ObjectReader reader) {
        return new Upkeep(
                documents(reader),
                reader.findObject("replacedBy", this::successor).orElse(null),
                reader.findSomeObjects("alternates", this::alternate),
                ChangesReading.ofPart(reader),
                reader.findDecimal("coreCredit", Range.POSITIVE));
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
