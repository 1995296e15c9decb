package boltlore.catalogue.json;

import boltlore.catalogue.Caution;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Market;
import boltlore.catalogue.Partner;
import boltlore.catalogue.Stage;
import boltlore.catalogue.Supply;
import boltlore.catalogue.Workshop;
import boltlore.json.CurrencyReading;
import boltlore.json.ObjectReader;
import boltlore.json.PartyReading;
import boltlore.json.Range;
import boltlore.json.TextShape;
import boltlore.measure.Party;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** workshop.json: who the workshop is, its rates, and the orders in which it fits, prints and walks. */
final class WorkshopFile {

    static final BigDecimal USUAL_UTILISATION = BigDecimal.valueOf(60);

    private final Reading reading;

    WorkshopFile(Reading reading) {
        this.reading = reading;
    }

    /** The workshop but for what stands in its other files. */
    Workshop read(
            ObjectReader reader,
            Map<String, Market> markets,
            Map<String, Supply> supplies,
            Map<String, Caution> cautions,
            CoatingShop coating) {
        List<String> languages = reader.texts("languages", TextShape.LANGUAGE, (language, location) -> {
            reading.names().give(Kind.LANGUAGE, "", language, location, reading.faults());
            return language;
        });
        return new Workshop(
                reader.text("workshop", TextShape.LINE),
                reader.text("place", TextShape.LINE),
                CurrencyReading.read(reader, "currency"),
                reader.decimal("labourPerHour", Range.NOT_NEGATIVE),
                reader.whole("assemblyDays", 0, 1000),
                language(reader, languages),
                languages,
                reader.objects("stages", this::stage),
                bags(reader),
                names(reader, "subSystems", Kind.SUB_SYSTEM),
                names(reader, "aisles", Kind.AISLE),
                partners(reader),
                suppliers(reader),
                markets,
                supplies,
                cautions,
                coating);
    }

    /** Of its own sheets: the first that it writes, where it does not say. */
    private String language(ObjectReader reader, List<String> written) {
        String said = reading.findMentioned(reader, "language", Kind.LANGUAGE);
        return said != null ? said : written.isEmpty() ? Wording.ENGLISH : written.get(0);
    }

    /** Share of sprayed powder that stays on the part where a coat does not say its own. */
    static BigDecimal utilisation(ObjectReader reader) {
        BigDecimal percent = reader.findDecimal("utilisationPercent", Range.above(0, 100));
        return percent == null ? USUAL_UTILISATION : percent;
    }

    private Stage stage(ObjectReader reader) {
        return new Stage(reading.named(reader, "stage", Kind.STAGE), reading.wording(reader, "says"));
    }

    private Map<String, Wording> bags(ObjectReader reader) {
        Map<String, Wording> bags = new LinkedHashMap<>();
        reader.findObjects("bags", bag -> {
            bags.put(reading.named(bag, "bag", Kind.BAG), reading.wording(bag, "says"));
            return bag;
        });
        return Collections.unmodifiableMap(bags);
    }

    private List<String> names(ObjectReader reader, String key, Kind kind) {
        int before = reading.faults().count();
        List<String> names = reader.texts(key, kind.shape(), (name, location) -> {
            reading.names().give(kind, "", name, location, reading.faults());
            return name;
        });
        if (reading.faults().count() > before) {
            reading.names().tear(kind, "");
        }
        return names;
    }

    private Map<String, Partner> partners(ObjectReader reader) {
        return Keyed.by(reader.findObjects("partners", this::partner), Partner::name);
    }

    private Partner partner(ObjectReader reader) {
        String name = reading.named(reader, "partner", Kind.PARTNER);
        return new Partner(
                name,
                reader.text("says"),
                reading.mentioned(reader, "language", Kind.LANGUAGE),
                reader.findObject("consignee", each -> PartyReading.read(each, name))
                        .orElse(Party.UNKNOWN));
    }

    private Map<String, String> suppliers(ObjectReader reader) {
        Map<String, String> suppliers = new LinkedHashMap<>();
        reader.findObjects("suppliers", supplier -> {
            suppliers.put(reading.named(supplier, "supplier", Kind.SUPPLIER), supplier.text("says"));
            return supplier;
        });
        return Collections.unmodifiableMap(suppliers);
    }
}
