package boltlore.catalogue.json;

import boltlore.catalogue.Capacity;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Caution;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Driving;
import boltlore.catalogue.EffectivityScale;
import boltlore.catalogue.Family;
import boltlore.catalogue.Finish;
import boltlore.catalogue.HouseRules;
import boltlore.catalogue.Market;
import boltlore.catalogue.Material;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.Shipping;
import boltlore.catalogue.Stores;
import boltlore.catalogue.Supply;
import boltlore.catalogue.Workshop;
import boltlore.json.ObjectReader;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Puts the catalogue together from its files, each read by itself. */
final class Assembly {

    private final Reading reading;
    private final Trees trees;
    private final Map<String, Family> alsoCut;

    /** @param alsoCut families whose days and numbers are cut as well where those of the same name here are */
    Assembly(Reading reading, Trees trees, Map<String, Family> alsoCut) {
        this.reading = reading;
        this.trees = trees;
        this.alsoCut = alsoCut;
    }

    Catalogue catalogue() {
        ObjectReader workshopFile = trees.open(CatalogueFolder.WORKSHOP, "workshop.schema.json", reading.faults());
        BigDecimal utilisation = WorkshopFile.utilisation(workshopFile);
        Workshop workshop = workshop(workshopFile);
        workshopFile.done();
        file(CatalogueFolder.DEFAULTS, "defaults", reader -> Defaults.read(reader, reading));
        Map<String, Finish> finishes =
                file(CatalogueFolder.FINISHES, "finishes", new FinishesFile(reading, utilisation)::read);
        Map<String, Material> materials =
                file(CatalogueFolder.MATERIALS, "materials", new MaterialsFile(reading)::read);
        Optional<PriceBook> prices = prices();
        OfferReading.Money money = new OfferReading.Money(workshop.currency(), prices.orElse(null));
        List<Part> parts = trees.under("parts/").stream()
                .flatMap(path -> file(path, "parts", new PartsFile(reading, money)::read).stream())
                .toList();
        List<Family> families = trees.under("families/").stream()
                .map(path -> path.split("/", -1)[1])
                .distinct()
                .map(name -> family(name, workshop))
                .toList();
        return new Catalogue(
                workshop,
                finishes,
                materials,
                Keyed.by(parts, Part::number),
                Keyed.by(families, Family::name),
                trees.revision(),
                prices.orElse(null),
                shipping(),
                capacity(),
                stores(),
                house());
    }

    private List<EffectivityScale> scales(String family, String folder) {
        Family other = alsoCut.get(family);
        return EffectivityReading.scales(trees.treesUnder(folder), other == null ? List.of() : other.scales());
    }

    private Workshop workshop(ObjectReader workshopFile) {
        MarketsFile marketsFile = new MarketsFile(reading);
        ObjectReader markets = trees.open(CatalogueFolder.MARKETS, "markets.schema.json", reading.faults());
        Map<String, Market> allMarkets = marketsFile.markets(markets);
        Map<String, Supply> allSupplies = marketsFile.supplies(markets);
        markets.done();
        Map<String, Caution> cautions = file(CatalogueFolder.CAUTIONS, "cautions", new CautionsFile(reading)::read);
        CoatingShop coating = file(CatalogueFolder.COATING, "coating", new CoatingFile(reading)::read);
        return new WorkshopFile(reading).read(workshopFile, allMarkets, allSupplies, cautions, coating);
    }

    private Optional<PriceBook> prices() {
        return trees.under(CatalogueFolder.PRICING).stream()
                .findFirst()
                .map(path -> file(path, "pricing", new PricingFile(reading)::read));
    }

    private Shipping shipping() {
        return trees.under(CatalogueFolder.SHIPPING).stream()
                .findFirst()
                .map(path -> file(path, "shipping", new ShippingFile(reading)::read))
                .orElse(Shipping.NONE);
    }

    private @Nullable Capacity capacity() {
        return trees.under(CatalogueFolder.CAPACITY).stream()
                .findFirst()
                .map(path -> file(path, "capacity", new CapacityFile(reading)::read))
                .orElse(null);
    }

    private Stores stores() {
        return trees.under(CatalogueFolder.STORES).stream()
                .findFirst()
                .map(path -> file(path, "stores", new StoresFile(reading)::read))
                .orElse(Stores.NONE);
    }

    private HouseRules house() {
        return trees.under(CatalogueFolder.HOUSE).stream()
                .findFirst()
                .map(path -> file(path, "house", new HouseFile(reading)::read))
                .orElse(HouseRules.NONE);
    }

    private Family family(String name, Workshop workshop) {
        String folder = "families/" + name + "/";
        Reading inFamily = reading.in(name, scales(name, folder));
        FamilyFile.Head head =
                file(folder + "family.json", "family", reader -> new FamilyFile(inFamily, workshop).read(reader, name));
        List<Position> positions = trees.under(folder + "kit/").stream()
                .flatMap(path -> file(path, "kit", new KitFile(inFamily)::read).stream())
                .toList();
        List<Companion> companions = file(folder + "companions.json", "companions", new CompanionsFile(inFamily)::read);
        Driving driving = file(folder + "driving.json", "driving", new DrivingFile(inFamily)::read);
        return new Family(
                head.name(),
                head.says(),
                head.donor(),
                EffectivityReading.with(inFamily, head.options()),
                head.limits(),
                head.finishes(),
                head.pairs(),
                new Holding(inFamily).complete(positions),
                companions,
                head.accepted(),
                file(folder + "weights.json", "weights", new WeightsFile(inFamily)::read),
                file(folder + "electrics.json", "electrics", new ElectricsFile(inFamily, driving.driveUnits())::read),
                file(folder + "tests.json", "tests", new TestsFile(inFamily)::read),
                file(folder + "joints.json", "joints", new JointsFile(inFamily)::read),
                file(folder + "fits.json", "fits", new FitsFile(inFamily)::read),
                driving,
                head.measures());
    }

    private <T> T file(String path, String schema, Function<ObjectReader, T> read) {
        ObjectReader reader = trees.open(path, schema + ".schema.json", reading.faults());
        T value = read.apply(reader);
        reader.done();
        return value;
    }
}
