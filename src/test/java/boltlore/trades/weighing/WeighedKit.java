package boltlore.trades.weighing;

import boltlore.catalogue.Aboard;
import boltlore.catalogue.Aboard.Who;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Chassis;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Donor;
import boltlore.catalogue.Family;
import boltlore.catalogue.Removed;
import boltlore.catalogue.Station;
import boltlore.catalogue.Weights;
import boltlore.measure.PositionName;
import boltlore.order.Extra;
import boltlore.resolution.FamilyPlan;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A donor vehicle of wheelbase 2400 mm with 560 kg in front and 490 kg behind, and a kit in the making. */
public final class WeighedKit {

    private final CatalogueSketch sketch = new CatalogueSketch();
    private final List<Removed> removed = new ArrayList<>();
    private final List<Aboard> aboard = new ArrayList<>();
    private final Map<PositionName, Station> stations = new LinkedHashMap<>();
    private final Map<String, Station> subSystems = new LinkedHashMap<>();
    private final List<Extra> extras = new ArrayList<>();
    private @Nullable Donor donor = donor(680, "1000", "1000", "1800", null);

    static Donor donor(
            @Nullable Integer heightMm, String front, String rear, String gross, @Nullable String leastFrontPercent) {
        Chassis chassis = new Chassis(
                2400,
                1300,
                1320,
                heightMm,
                new BigDecimal("560"),
                new BigDecimal("490"),
                new BigDecimal(front),
                new BigDecimal(rear),
                new BigDecimal(gross));
        return new Donor(chassis, Map.of(), leastFrontPercent == null ? null : new BigDecimal(leastFrontPercent), null);
    }

    public WeighedKit donor(@Nullable Donor value) {
        donor = value;
        return this;
    }

    public WeighedKit removed(String name, String kg, int stationMm, @Nullable Integer heightMm) {
        Station at = new Station(stationMm, heightMm);
        removed.add(new Removed(name, name, new BigDecimal(kg), at, Condition.ALWAYS));
        return this;
    }

    public WeighedKit added(String name, String kg, @Nullable Integer stationMm, @Nullable Integer heightMm) {
        sketch.part(PartSketch.bought(name).massKg(kg))
                .position(PositionSketch.at(name).line(name, name, "1"));
        if (stationMm != null) {
            stations.put(new PositionName(name), new Station(stationMm, heightMm));
        }
        return this;
    }

    public WeighedKit subSystem(String name, int stationMm) {
        subSystems.put(name, new Station(stationMm, null));
        return this;
    }

    public WeighedKit aboard(Who who, String kg, int stationMm) {
        aboard.add(new Aboard(who.name(), who.name(), who, new BigDecimal(kg), new Station(stationMm, null)));
        return this;
    }

    public WeighedKit extra(Extra extra) {
        extras.add(extra);
        return this;
    }

    public Weighing weighing() {
        return AxleLoadsTrade.weighing(inWork());
    }

    KitInWork inWork() {
        Catalogue catalogue = sketch.draw();
        OrderSketch order = new OrderSketch(catalogue).extra(extras.toArray(Extra[]::new));
        return new KitInWork(new FamilyPlan(catalogue, family(catalogue)), order.bill(), LocalDate.of(2026, 3, 2));
    }

    public Family family(Catalogue catalogue) {
        Family plain = catalogue.family(CatalogueSketch.FAMILY);
        return new Family(
                plain.name(),
                plain.says(),
                donor,
                plain.options(),
                plain.limits(),
                plain.finishes(),
                plain.pairs(),
                plain.positions(),
                plain.companions(),
                plain.accepted(),
                new Weights(removed, aboard, stations, subSystems),
                plain.electrics(),
                plain.endOfLine(),
                plain.joints(),
                plain.fits());
    }
}
