package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Demand;
import boltlore.catalogue.Family;
import boltlore.catalogue.HouseRules.Bound;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.Scale;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A limit that is written down as a number names its bound of house.json and lies within it: a reading that passes a limit of
 * the family must pass what is published. Limits that are worked out for each kit have their bounds in their formulas.
 */
final class BoundsKept {

    private final Catalogue catalogue;
    private final Family family;
    private final List<Remark> found = new ArrayList<>();

    private BoundsKept(Catalogue catalogue, Family family) {
        this.catalogue = catalogue;
        this.family = family;
    }

    /** A workshop that has no bounds asks for none. */
    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.house().bounds().isEmpty()
                ? Stream.empty()
                : catalogue.families().values().stream().flatMap(family -> new BoundsKept(catalogue, family).all());
    }

    private Stream<Remark> all() {
        family.endOfLine().groups().stream()
                .flatMap(group -> group.tests().stream())
                .forEach(this::test);
        return found.stream();
    }

    private void test(KitTest test) {
        Demand demand = test.demand();
        if (demand instanceof Demand.AtLeast least) {
            limit(test, least.least(), null);
        } else if (demand instanceof Demand.AtMost most) {
            limit(test, null, most.most());
        } else if (demand instanceof Demand.Between between) {
            limit(test, between.least(), between.most());
        }
    }

    private void limit(KitTest test, @Nullable BigDecimal least, @Nullable BigDecimal most) {
        Bound bound = test.bound() == null ? null : catalogue.house().bounds().get(test.bound());
        if (bound == null) {
            add(test, "a limit in figures without 'bound'", "the bound of house.json that it keeps");
            return;
        }
        Scale scale = family.endOfLine().instrument(test.instrument()).scale();
        if (scale != null && !scale.unit().equals(bound.unit())) {
            add(test, "a limit in " + scale.unit(), "one in " + bound.unit() + ", as bound '" + bound.name() + "' is");
            return;
        }
        side(test, bound, "atLeast", least, bound.atLeast(), bound.atMost());
        side(test, bound, "atMost", most, bound.atLeast(), bound.atMost());
    }

    private void side(
            KitTest test,
            Bound bound,
            String key,
            @Nullable BigDecimal limit,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high) {
        boolean bounded = (key.equals("atLeast") ? low : high) != null;
        if (limit == null && bounded) {
            add(test, "no '" + key + "'", said(bound));
        } else if (limit != null && (below(limit, low) || below(high, limit))) {
            add(test, "'" + key + "' " + Digits.plain(limit) + " " + bound.unit(), said(bound));
        }
    }

    private static boolean below(@Nullable BigDecimal figure, @Nullable BigDecimal bound) {
        return figure != null && bound != null && figure.compareTo(bound) < 0;
    }

    /** 'at most 60 V: voltage that people may touch (UN Regulation 100, 2.17)' */
    private static String said(Bound bound) {
        List<String> sides = new ArrayList<>();
        if (bound.atLeast() != null) {
            sides.add("at least " + Digits.plain(bound.atLeast()));
        }
        if (bound.atMost() != null) {
            sides.add("at most " + Digits.plain(bound.atMost()));
        }
        return String.join(" and ", sides) + " " + bound.unit() + ": " + bound.says() + " (" + bound.source() + ")";
    }

    private void add(KitTest test, String what, String expected) {
        found.add(new Remark(
                "test " + family.name() + "/" + test.name(),
                Check.TEST_BOUND,
                what,
                expected,
                "Check unit and figure in tests.json; only somebody qualified for it widens a bound of house.json"));
    }
}
