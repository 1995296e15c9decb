package boltlore.oracle;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.findings.Severity;
import boltlore.measure.PartNumber;
import boltlore.order.Order;
import boltlore.order.json.OrderReader;
import boltlore.resolution.Finding;
import boltlore.resolution.Resolution;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** The worked example as its files say it. */
final class WorkedExample {

    private static final Path FOLDER = Path.of("src/test/resources/example");

    static final Catalogue CATALOGUE = sound(CatalogueReader.read(FOLDER.resolve("catalog")));
    static final Family FAMILY = CATALOGUE.family("example");
    static final Expected EXPECTED = Expected.read(FOLDER.resolve("expected.json"));

    private WorkedExample() {}

    static Order order(String file) {
        return sound(OrderReader.read(FOLDER.resolve("orders").resolve(file + ".json"), CATALOGUE));
    }

    static List<Choices> variants() {
        return new Variants(FAMILY).all();
    }

    static <T> T sound(Outcome<T> outcome) {
        if (outcome instanceof Outcome.Sound<T> sound) {
            return sound.value();
        }
        throw new AssertionError("Not sound: " + outcome.faults());
    }

    /** 'finding: subject' of what stops or is to be looked at. */
    static SortedSet<String> said(Resolution resolution) {
        SortedSet<String> said = new TreeSet<>();
        for (Finding finding : resolution.findings()) {
            if (finding.severity() != Severity.NOTE) {
                said.add(finding.kind().written() + ": " + finding.subject());
            }
        }
        return said;
    }

    static List<String> texts(SortedSet<? extends Record> names) {
        return names.stream().map(Object::toString).toList();
    }

    static SortedMap<String, BigDecimal> texts(SortedMap<PartNumber, BigDecimal> quantities) {
        SortedMap<String, BigDecimal> texts = new TreeMap<>();
        quantities.forEach((part, quantity) -> texts.put(part.text(), quantity.stripTrailingZeros()));
        return texts;
    }
}
