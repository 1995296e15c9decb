package boltlore.catalogue.json;

import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Finish;
import boltlore.catalogue.PowderCoat;
import boltlore.faults.Nearest;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** finishes.json: finishes with their coats from the metal outwards. */
final class FinishesFile {

    private final Reading reading;
    private final BigDecimal usualUtilisation;

    FinishesFile(Reading reading, BigDecimal usualUtilisation) {
        this.reading = reading;
        this.usualUtilisation = usualUtilisation;
    }

    Map<String, Finish> read(ObjectReader reader) {
        return Keyed.by(reader.findObjects("finishes", this::finish), Finish::name);
    }

    private Finish finish(ObjectReader reader) {
        return new Finish(
                reading.named(reader, "finish", Kind.FINISH),
                reading.wording(reader, "says"),
                Reading.textOrNone(reader, "preTreatment"),
                metals(reader),
                reader.findObjects("coats", this::coat),
                reader.object("where", this::where));
    }

    private Set<String> metals(ObjectReader reader) {
        return new TreeSet<>(reader.findTexts("metals", TextShape.NAME, (metal, location) -> {
            Set<String> known = MaterialsFile.METALS.byName().keySet();
            if (!known.contains(metal)) {
                String expected = "one of " + String.join(", ", known);
                reading.faults()
                        .add(location.fault("metal '" + metal + "'", expected, Nearest.advice(metal, known, "")));
            }
            return metal;
        }));
    }

    private PowderCoat coat(ObjectReader reader) {
        String powder = reading.mentioned(reader, "powder", Kind.POWDER);
        BigDecimal gravity = reader.decimal("specificGravity", Range.above(0, 10));
        Film film = reader.object("filmUm", FinishesFile::film);
        Cure cure = reader.object("cure", FinishesFile::cure);
        BigDecimal utilisation = reader.findDecimal("utilisationPercent", Range.above(0, 100));
        return new PowderCoat(
                powder,
                gravity,
                film.min(),
                film.target(),
                film.max(),
                cure.metalC(),
                cure.minutes(),
                utilisation == null ? usualUtilisation : utilisation);
    }

    private record Film(int min, int target, int max) {}

    private static Film film(ObjectReader reader) {
        Film film =
                new Film(reader.whole("min", 1, 2000), reader.whole("target", 1, 2000), reader.whole("max", 1, 2000));
        if (reader.sound() && (film.min() > film.target() || film.target() > film.max())) {
            reader.fault(
                    film.min() + ", " + film.target() + " and " + film.max() + " µm",
                    "min, target and max in rising order",
                    "Check the powder's data sheet.");
        }
        return film;
    }

    private record Cure(int metalC, int minutes) {}

    private static Cure cure(ObjectReader reader) {
        return new Cure(reader.whole("metalC", 80, 300), reader.whole("minutes", 1, 240));
    }

    private CoatedWhere where(ObjectReader reader) {
        String oven = reading.findMentioned(reader, "oven", Kind.OVEN);
        String coater = reading.findMentioned(reader, "coater", Kind.COATER);
        BigDecimal byArea = reader.findDecimal("pricePerM2", Range.NOT_NEGATIVE);
        BigDecimal byPiece = reader.findDecimal("pricePerPiece", Range.NOT_NEGATIVE);
        reader.oneWay("oven", "coater pricePerM2", "coater pricePerPiece");
        if (coater != null && byArea != null) {
            return new CoatedWhere.OutsideByArea(coater, byArea);
        }
        if (coater != null && byPiece != null) {
            return new CoatedWhere.OutsideByPiece(coater, byPiece);
        }
        return new CoatedWhere.OwnOven(oven == null ? "" : oven);
    }
}
