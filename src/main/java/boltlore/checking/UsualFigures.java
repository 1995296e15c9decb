package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Part;
import boltlore.measure.Digits;
import boltlore.measure.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Figures far outside what is usual, which a slip of the point makes of any. The windows are data, in {@code usual-figures.txt}
 * beside this class, each with whose it is; every record of the catalogue is gone through, so that a figure is judged as soon as
 * it has a window there.
 */
final class UsualFigures {

    private static final int KEY = 4;

    /** Least and most, both usual themselves. */
    private record Window(BigDecimal least, BigDecimal most, String what, String source, String key) {

        static Window of(String key, String written) {
            List<String> cells =
                    Arrays.stream(written.split("\\|")).map(String::strip).toList();
            return new Window(
                    new BigDecimal(cells.get(0)),
                    new BigDecimal(cells.get(1)),
                    cells.get(2),
                    cells.get(3),
                    cells.size() > KEY ? cells.get(KEY) : key.substring(key.indexOf('.') + 1));
        }

        /** Nothing is told of 0, by which nobody says anything. */
        boolean holds(BigDecimal figure) {
            return figure.signum() == 0 || (figure.compareTo(least) >= 0 && figure.compareTo(most) <= 0);
        }

        String says() {
            return Digits.plain(least) + " to " + Digits.plain(most) + ", as " + what + " has it ("
                    + (source.equals("practice") ? "common practice" : source) + ")";
        }
    }

    /** A component of a record, with its window where it has one. */
    private record Component(
            String name, RecordComponent of, @Nullable Window window) {

        @Nullable
        Object in(Record owner) {
            return RecordValues.of(owner, of);
        }
    }

    private static final Map<String, Window> WINDOWS = windows();

    /** Names of whatever a figure is of, the telling one first. */
    private static final List<String> TELLING = List.of("part", "position", "name", "supplier", "code", "says");

    private static final ClassValue<List<Component>> COMPONENTS = new ClassValue<>() {
        @Override
        protected List<Component> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .map(of -> new Component(of.getName(), of, WINDOWS.get(type.getSimpleName() + "." + of.getName())))
                    .toList();
        }
    };

    private UsualFigures() {}

    private static Map<String, Window> windows() {
        Properties read = new Properties();
        try (InputStream file = UsualFigures.class.getResourceAsStream("usual-figures.txt")) {
            read.load(new InputStreamReader(Objects.requireNonNull(file), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return read.stringPropertyNames().stream()
                .collect(Collectors.toMap(key -> key, key -> Window.of(key, read.getProperty(key))));
    }

    /** Which records and components have a window: {@code Saw.kerfMm}. */
    static Set<String> judged() {
        return WINDOWS.keySet();
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        Stream<Remark> parts = catalogue.parts().values().stream().flatMap(part -> ofPart(part));
        Stream<Remark> families = catalogue.families().values().stream().flatMap(UsualFigures::ofFamily);
        Stream<Remark> shop = Stream.of(
                        catalogue.workshop(),
                        catalogue.finishes(),
                        catalogue.materials(),
                        Optional.ofNullable(catalogue.prices()),
                        catalogue.shipping(),
                        Optional.ofNullable(catalogue.capacity()),
                        catalogue.stores())
                .flatMap(of -> in(of, "workshop", ""));
        return Stream.of(parts, families, shop).flatMap(remarks -> remarks).distinct();
    }

    private static Stream<Remark> ofPart(Part part) {
        return in(part, Said.part(part), "");
    }

    private static Stream<Remark> ofFamily(Family family) {
        return Stream.of(Optional.ofNullable(family.donor()), family.driving(), family.weights(), family.joints())
                .flatMap(of -> in(of, "family " + family.name(), ""));
    }

    private static Stream<Remark> in(@Nullable Object of, String about, String named) {
        if (of instanceof Record owner) {
            List<Component> components = COMPONENTS.get(owner.getClass());
            String name = named(owner, components).orElse(named);
            return components.stream().flatMap(component -> {
                Object value = component.in(owner);
                return component.window() == null
                        ? in(value, about, name)
                        : judged(value, component.window(), about, name);
            });
        } else if (of instanceof Map<?, ?> map) {
            return map.entrySet().stream().flatMap(entry -> in(entry.getValue(), about, entry.getKey() + ""));
        } else if (of instanceof Collection<?> all) {
            return all.stream().flatMap(each -> in(each, about, named));
        }
        return of instanceof Optional<?> maybe ? maybe.stream().flatMap(each -> in(each, about, named)) : Stream.of();
    }

    private static Stream<Remark> judged(@Nullable Object value, Window window, String about, String name) {
        if (!(value instanceof Number number)) {
            return Stream.empty();
        }
        BigDecimal figure = new BigDecimal(number.toString());
        return window.holds(figure)
                ? Stream.empty()
                : Stream.of(new Remark(
                        about,
                        Check.UNUSUAL,
                        "'" + window.key() + "' " + Digits.plain(figure) + (name.isEmpty() ? "" : " (" + name + ")"),
                        window.says(),
                        "Look at its point and its unit, and where it is from"));
    }

    private static Optional<String> named(Record owner, List<Component> components) {
        return TELLING.stream()
                .flatMap(name ->
                        components.stream().filter(component -> component.name().equals(name)))
                .map(component -> component.in(owner))
                .filter(Objects::nonNull)
                .map(value -> value instanceof Wording says ? says.english() : value.toString())
                .filter(text -> !text.isEmpty())
                .findFirst();
    }
}
