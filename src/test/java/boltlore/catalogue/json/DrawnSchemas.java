package boltlore.catalogue.json;

import boltlore.bring.MappingFile;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Workshop;
import boltlore.json.CommonSchema;
import boltlore.json.Descriptions;
import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.SchemaName;
import boltlore.json.SchemaReader;
import boltlore.json.TextShape;
import boltlore.order.json.OrderKeys;
import boltlore.trades.cutting.RemnantKeys;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;

/** The schemas of all files, each drawn from what the program's own reader of such a file asks for. */
final class DrawnSchemas {

    private static final Path SENTENCES = Path.of("src/test/resources/schema/descriptions.txt");

    private static final Map<TextShape, String> TEXTS = Map.ofEntries(
            Map.entry(TextShape.NAME, "name"),
            Map.entry(TextShape.PART_NUMBER, "partNumber"),
            Map.entry(TextShape.WORDS, "words"),
            Map.entry(TextShape.ORDER_NAME, "orderName"),
            Map.entry(TextShape.LINE, "line"),
            Map.entry(TextShape.LANGUAGE, "language"),
            Map.entry(TextShape.CURRENCY, "currency"),
            Map.entry(Shapes.AISLE, "aisle"),
            Map.entry(Shapes.BIN, "bin"),
            Map.entry(Shapes.COUNTRY, "country"),
            Map.entry(Shapes.HS_CODE, "hsCode"),
            Map.entry(Shapes.HS_BEGINNING, "hsBeginning"),
            Map.entry(TextShape.UN_NUMBER, "unNumber"));

    private final Descriptions descriptions = Descriptions.read(SENTENCES);
    private final Map<String, String> drawn = new TreeMap<>();

    DrawnSchemas(Catalogue small) {
        Reading reading = Reading.begin().in("cart", List.of());
        Workshop workshop = small.workshop();
        draw("capacity", new CapacityFile(reading)::read);
        draw("bring", MappingFile::ask);
        draw("cautions", new CautionsFile(reading)::read);
        draw("coating", new CoatingFile(reading)::read);
        draw("companions", new CompanionsFile(reading)::read);
        draw("defaults", reader -> Defaults.read(reader, reading));
        draw("driving", new DrivingFile(reading)::read);
        draw("electrics", new ElectricsFile(reading, java.util.List.of())::read);
        draw("family", reader -> new FamilyFile(reading, workshop).read(reader, "cart"));
        draw("finishes", new FinishesFile(reading, BigDecimal.TEN)::read);
        draw("fits", new FitsFile(reading)::read);
        draw("joints", new JointsFile(reading)::read);
        draw("house", new HouseFile(reading)::read);
        draw("kit", new KitFile(reading)::read);
        draw("markets", reader -> {
            new MarketsFile(reading).markets(reader);
            new MarketsFile(reading).supplies(reader);
        });
        draw("materials", new MaterialsFile(reading)::read);
        draw(
                "parts",
                new PartsFile(reading, new OfferReading.Money(java.util.Currency.getInstance("EUR"), null))::read);
        draw("pricing", new PricingFile(reading)::read);
        draw("shipping", new ShippingFile(reading)::read);
        draw("stores", new StoresFile(reading)::read);
        draw("tests", new TestsFile(reading)::read);
        draw("weights", new WeightsFile(reading)::read);
        draw("workshop", reader -> {
            WorkshopFile.utilisation(reader);
            CoatingShop none = workshop.coating();
            new WorkshopFile(reading).read(reader, Map.of(), Map.of(), Map.of(), none);
        });
        draw("order", reader -> OrderKeys.ask(reader, small), Map.of("family", "cart"));
        draw("remnants", reader -> RemnantKeys.ask(reader, small));
        drawn.put("common.schema.json", CommonSchema.text(TEXTS));
    }

    Descriptions descriptions() {
        return descriptions;
    }

    /** The schemas' texts by their files' names. */
    Map<String, String> texts() {
        return drawn;
    }

    private void draw(String name, Consumer<ObjectReader> reading) {
        draw(name, reading, Map.of());
    }

    private void draw(String name, Consumer<ObjectReader> reading, Map<String, String> answers) {
        String file = name + ".schema.json";
        SchemaReader reader = new SchemaReader(name, descriptions, TEXTS, answers);
        SchemaName.check(reader, file);
        reading.accept(reader);
        JsonOut.Members head = JsonOut.object()
                .put("$schema", "https://json-schema.org/draft/2020-12/schema")
                .put("title", descriptions.exactly(file))
                .put("description", descriptions.exactly(file + "/"));
        drawn.put(file, reader.drawn(head).written());
    }
}
