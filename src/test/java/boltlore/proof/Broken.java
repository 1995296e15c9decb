package boltlore.proof;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Family;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Line;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** The demo van with something broken in it. */
final class Broken {

    private Catalogue catalogue = DemoFamily.catalogue();

    Catalogue catalogue() {
        return catalogue;
    }

    private Family family() {
        return catalogue.family(DemoFamily.VAN);
    }

    private Broken family(String component, Object value) {
        Map<String, Family> families = new LinkedHashMap<>(catalogue.families());
        families.put(DemoFamily.VAN, Altered.with(family(), component, value));
        catalogue = Altered.with(catalogue, "families", families);
        return this;
    }

    Broken limit(String name, Condition when, Condition then) {
        List<Limit> limits = new ArrayList<>(family().limits());
        limits.add(new Limit(name, "Because the test says so.", null, when, then));
        return family("limits", limits);
    }

    Broken never(String name, Condition when) {
        return limit(name, when, null);
    }

    Broken withoutLimit(String name) {
        return family(
                "limits",
                family().limits().stream()
                        .filter(limit -> !limit.name().equals(name))
                        .toList());
    }

    Broken position(String name, String component, Object value) {
        return positions(
                position -> position.name().text().equals(name) ? Altered.with(position, component, value) : position);
    }

    private Broken positions(UnaryOperator<Position> change) {
        return family("positions", family().positions().stream().map(change).toList());
    }

    Broken line(String name, String component, Object value) {
        return positions(position -> Altered.with(
                position,
                "lines",
                position.lines().stream()
                        .map(line -> line.name().text().equals(name) ? Altered.with(line, component, value) : line)
                        .toList()));
    }

    Broken withoutLine(String name) {
        return positions(position -> Altered.with(
                position,
                "lines",
                position.lines().stream()
                        .filter(line -> !line.name().text().equals(name))
                        .toList()));
    }

    Line line(String name) {
        return family().lines()
                .filter(line -> line.name().text().equals(name))
                .findFirst()
                .orElseThrow();
    }

    Broken part(String number, String component, Object value) {
        Map<PartNumber, Part> parts = new LinkedHashMap<>(catalogue.parts());
        PartNumber key = new PartNumber(number);
        parts.put(key, Altered.with(catalogue.part(key), component, value));
        catalogue = Altered.with(catalogue, "parts", parts);
        return this;
    }

    Broken fact(String option, String value, String fact, Object to) {
        List<Option> options = family().options().stream()
                .map(each -> each.name().text().equals(option) ? fact(each, value, fact, to) : each)
                .toList();
        return family("options", options);
    }

    private static Option fact(Option option, String wanted, String fact, Object to) {
        List<OptionValue> values = option.values().stream()
                .map(value -> value.value().equals(wanted)
                        ? Altered.with(value, "facts", Altered.<Facts>with(value.facts(), fact, to))
                        : value)
                .toList();
        return Altered.with(option, "values", values);
    }

    /** Without one of the needs that the family's companions give to a part. */
    Broken withoutNeed(String part, int number) {
        return family(
                "companions",
                family().companions().stream()
                        .map(companion -> companion.part().text().equals(part)
                                ? Altered.with(companion, "needs", without(companion.needs(), number))
                                : companion)
                        .toList());
    }

    private static <T> List<T> without(List<T> all, int number) {
        List<T> fewer = new ArrayList<>(all);
        fewer.remove(number);
        return fewer;
    }

    /** The part's first bare feature in another size. */
    Broken feature(String part, String size) {
        CoatingSpec coat = catalogue.part(new PartNumber(part)).coat();
        List<Feature> features = new ArrayList<>(coat.features());
        features.set(0, Altered.with(features.get(0), "size", size));
        return part(part, "coat", Altered.with(coat, "features", features));
    }

    Broken withoutMask(String name) {
        CoatingShop shop = catalogue.workshop().coating();
        CoatingShop poorer = Altered.with(
                shop,
                "masks",
                shop.masks().stream().filter(mask -> !mask.name().equals(name)).toList());
        catalogue = Altered.with(catalogue, "workshop", Altered.with(catalogue.workshop(), "coating", poorer));
        return this;
    }

    /** With one more value of an option. */
    Broken value(String option, String value) {
        List<Option> options = family().options().stream()
                .map(each -> each.name().text().equals(option) ? withValue(each, value) : each)
                .toList();
        return family("options", options);
    }

    private static Option withValue(Option option, String value) {
        List<OptionValue> values = new ArrayList<>(option.values());
        values.add(new OptionValue(value, Wording.english("With " + value), Facts.NONE));
        return Altered.with(option, "values", values);
    }

    /** With one more option. */
    Broken option(String name, String... values) {
        List<Option> options = new ArrayList<>(family().options());
        List<OptionValue> all = Stream.of(values)
                .map(value -> new OptionValue(value, Wording.english("With " + value), Facts.NONE))
                .toList();
        options.add(new Option(new OptionName(name), "Which " + name + "?", null, all, null, List.of()));
        return family("options", options);
    }
}
