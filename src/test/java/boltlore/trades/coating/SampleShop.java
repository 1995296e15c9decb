package boltlore.trades.coating;

import boltlore.catalogue.Booth;
import boltlore.catalogue.BoothWork;
import boltlore.catalogue.ChangeOvers;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Coater;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.CoatingTime;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Geometry;
import boltlore.catalogue.Making;
import boltlore.catalogue.Mask;
import boltlore.catalogue.Oven;
import boltlore.catalogue.Part;
import boltlore.catalogue.Powder;
import boltlore.catalogue.PowderCoat;
import boltlore.catalogue.Source;
import boltlore.catalogue.Structure;
import boltlore.catalogue.TooLarge;
import boltlore.catalogue.Traits;
import boltlore.catalogue.Upkeep;
import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A small coating shop, finishes and parts made by hand. */
public final class SampleShop {

    public static final PowderCoat BLACK = coats("PB-BLACK", "1.5", 80);
    public static final PowderCoat PRIMER = coats("PB-PRIMER", "1.6", 50);

    public static final Oven OVEN = new Oven(
            "own",
            "Box oven",
            new EnvelopeMm(2000, 1000, 1000),
            10,
            new BigDecimal("100"),
            new BigDecimal("10"),
            new BigDecimal("50"));

    public static final CoatingShop SHOP = shop("PB-BLACK");

    public static final Finish OWN_BLACK = own("black", BLACK);
    public static final Finish OWN_TWO_COAT = own("two-coat", PRIMER, BLACK);
    public static final Finish ZINC_BY_AREA =
            outside("zinc", new CoatedWhere.OutsideByArea("Coater A", new BigDecimal("24.50")));
    public static final Finish ZINC_BY_PIECE =
            outside("zinc-small", new CoatedWhere.OutsideByPiece("Coater B", new BigDecimal("1.90")));

    private SampleShop() {}

    public static CoatingShop shop(String powderInBooth) {
        return new CoatingShop(
                Map.of("own", OVEN),
                List.of(new Booth("booth", "Booth", powderInBooth)),
                Map.of(
                        "Coater A", new Coater("Coater A", "Zinc", 8, true),
                        "Coater B", new Coater("Coater B", "Small parts", 6, false)),
                List.of(new Mask("plug-m8", "Plug M8", Feature.Kind.THREAD, "M8")),
                Map.of(
                        "PB-BLACK", new Powder("PB-BLACK", "Black", new BigDecimal("8.00")),
                        "PB-PRIMER", new Powder("PB-PRIMER", "Primer", new BigDecimal("6.00")),
                        "PB-GREY", new Powder("PB-GREY", "Grey", new BigDecimal("9.00"))),
                new BigDecimal("10.00"));
    }

    /** An oven as the sample's, with sections apart, a coater for what is too large, and 45 minutes beside the cure. */
    public static Oven oven(String sectionRatio) {
        return new Oven(
                OVEN.name(),
                OVEN.says(),
                OVEN.inside(),
                OVEN.hooks(),
                OVEN.loadKg(),
                OVEN.loadAreaM2(),
                OVEN.fillPercent(),
                new BigDecimal(sectionRatio),
                45,
                0,
                new TooLarge("Coater B", new BigDecimal("20.00")));
    }

    /** The sample's oven with rails to hang from. */
    public static Oven railed(int rails) {
        return new Oven(
                OVEN.name(),
                OVEN.says(),
                OVEN.inside(),
                OVEN.hooks(),
                OVEN.loadKg(),
                OVEN.loadAreaM2(),
                OVEN.fillPercent(),
                null,
                0,
                rails,
                null);
    }

    /** Cleaning costs and days as told, three powders with their lightness. */
    public static CoatingShop costed(String powderInBooth, int roundDays) {
        return new CoatingShop(
                Map.of("own", oven("3")),
                List.of(new Booth("booth", "Booth", powderInBooth, new BigDecimal("80"))),
                shop("").coaters(),
                shop("").masks(),
                Map.of(
                        "PB-BLACK", powder("PB-BLACK", 26, ""),
                        "PB-PRIMER", powder("PB-PRIMER", 63, ""),
                        "PB-GREY", powder("PB-GREY", 54, ""),
                        "PB-WHITE", powder("PB-WHITE", 92, ""),
                        "PB-METAL", powder("PB-METAL", 70, "its flakes part from the base")),
                new BigDecimal("10.00"),
                new ChangeOvers(
                        new BoothWork(20, 1, new BigDecimal("0.5")),
                        new BoothWork(45, 2, BigDecimal.ONE),
                        new BoothWork(30, 1, new BigDecimal("0.5"))),
                new CoatingTime(480, roundDays));
    }

    private static Powder powder(String code, int lightness, String never) {
        return new Powder(code, code, new BigDecimal("8.00"), BigDecimal.valueOf(lightness), never);
    }

    public static PowderCoat coats(String powder, String specificGravity, int filmUm) {
        return new PowderCoat(
                powder,
                new BigDecimal(specificGravity),
                filmUm - 20,
                filmUm,
                filmUm + 40,
                180,
                15,
                new BigDecimal("60"));
    }

    public static Finish own(String name, PowderCoat... coats) {
        return new Finish(
                name,
                Wording.english("Finish " + name),
                "blast",
                Set.of(),
                List.of(coats),
                new CoatedWhere.OwnOven("own"));
    }

    private static Finish outside(String name, CoatedWhere where) {
        return new Finish(name, Wording.english("Finish " + name), "by the coater", Set.of(), List.of(), where);
    }

    public static Part part(String number, @Nullable CoatingSpec coat) {
        return new Part(
                new PartNumber(number),
                "A",
                Wording.english("Part " + number),
                "each",
                Source.MAKE,
                BigDecimal.ONE,
                BigDecimal.ZERO,
                new BigDecimal("2.5"),
                0,
                "",
                null,
                null,
                Structure.LEAF,
                Making.NONE,
                List.of(),
                coat,
                null,
                null,
                List.of(),
                null,
                List.of(),
                List.of(),
                Traits.NONE,
                null,
                null,
                null,
                Geometry.NONE,
                Upkeep.NONE);
    }

    /** A flat bracket of that area with one hang point and small envelope. */
    public static CoatingSpec coat(String areaM2, Feature... features) {
        return new CoatingSpec(
                "brackets",
                null,
                new BigDecimal(areaM2),
                new BigDecimal("3"),
                new BigDecimal("4"),
                List.of(features),
                1,
                new EnvelopeMm(300, 200, 50));
    }

    /** A bracket of that area and outer size with one hang point. */
    public static CoatingSpec coat(String areaM2, EnvelopeMm envelope) {
        CoatingSpec flat = coat(areaM2);
        return new CoatingSpec(
                flat.role(),
                flat.finish(),
                flat.areaM2(),
                flat.thinnestMm(),
                flat.thickestMm(),
                flat.features(),
                flat.hangPoints(),
                envelope);
    }

    /** A small bracket with those sections. */
    public static CoatingSpec sections(String thinnestMm, String thickestMm) {
        CoatingSpec flat = coat("0.1");
        return new CoatingSpec(
                flat.role(),
                flat.finish(),
                flat.areaM2(),
                new BigDecimal(thinnestMm),
                new BigDecimal(thickestMm),
                flat.features(),
                flat.hangPoints(),
                flat.envelope());
    }
}
