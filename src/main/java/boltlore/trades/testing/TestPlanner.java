package boltlore.trades.testing;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.EndOfLine;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.Label;
import boltlore.catalogue.ManualSection;
import boltlore.catalogue.TestGroup;
import boltlore.measure.PositionName;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Works out what is tested of one kit: everything the kit holds, and nothing that it does not. */
public final class TestPlanner {

    private final Bill bill;
    private final EndOfLine endOfLine;
    private final KitPlaces places;
    private final LimitCalculator limits;

    private TestPlanner(Bill bill) {
        this.bill = bill;
        this.endOfLine = bill.resolved().choices().family().endOfLine();
        this.places = new KitPlaces(bill);
        this.limits = LimitCalculator.of(bill);
    }

    public static TestPlan plan(Catalogue catalogue, Bill bill) {
        return new TestPlanner(bill).plan(catalogue.revision());
    }

    private TestPlan plan(String revision) {
        return new TestPlan(
                bill,
                revision,
                endOfLine.groups().stream()
                        .map(group -> new GroupPlan(group, rows(group)))
                        .filter(group -> !group.rows().isEmpty())
                        .toList(),
                endOfLine.labels().stream().flatMap(this::labels).toList(),
                endOfLine.sections().stream().flatMap(this::section).toList());
    }

    private List<TestRow> rows(TestGroup group) {
        return group.tests().stream()
                .filter(test -> places.holds(test.when()))
                .flatMap(test -> rows(group, test))
                .toList();
    }

    private Stream<TestRow> rows(TestGroup group, KitTest test) {
        if (test.once()) {
            return Stream.of(row(group, test, test.name(), null));
        }
        Stream<TestRow> named = test.at().stream()
                .flatMap(position ->
                        named(group, test, position, places.at(position).toList()));
        Stream<TestRow> earthed =
                places.earthPoints().map(at -> row(group, test, test.name() + "." + earthKey(at), at));
        return test.earthPoints() ? Stream.concat(named, earthed) : named;
    }

    /** The position is name enough where one part stands there. */
    private Stream<TestRow> named(TestGroup group, KitTest test, PositionName position, List<TestedAt> there) {
        String key = test.name() + "." + position.text();
        return there.stream().map(at -> {
            String part = there.size() == 1 ? "" : "." + at.part().number().text();
            return row(group, test, key + part, at);
        });
    }

    private static String earthKey(TestedAt at) {
        String part = at.position().name().text() + "." + at.part().number().text();
        return at.pieces() == 1 ? part : part + "." + at.piece();
    }

    private TestRow row(TestGroup group, KitTest test, String key, @Nullable TestedAt at) {
        ComputedLimit computed = limits.limit(test.demand(), endOfLine.instrument(test.instrument()));
        return new TestRow(
                key,
                group,
                test,
                at,
                endOfLine.instrument(test.instrument()),
                computed.limit(),
                computed.basis(),
                computed.unit(),
                computed.suitedOhm(),
                computed.packVolts(),
                Boxes.lay(key, test, endOfLine.instrument(test.instrument())));
    }

    private Stream<PlacedLabel> labels(Label label) {
        if (!places.holds(label.when())) {
            return Stream.empty();
        }
        return places.at(label.from())
                .flatMap(from -> label.at().isEmpty()
                        ? Stream.of(new PlacedLabel(label, null, from.part()))
                        : label.at().stream().flatMap(places::at).map(at -> new PlacedLabel(label, at, from.part())));
    }

    private Stream<KitSection> section(ManualSection section) {
        return places.holds(section.when())
                ? places.at(section.from()).map(from -> new KitSection(section, from.part()))
                : Stream.empty();
    }
}
