package boltlore.trades.testing;

import boltlore.bill.Bill;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that is tested of one finished kit, in order, and the papers that go with it.
 *
 * @param revision of the catalogue that the limits come from
 */
public record TestPlan(
        Bill bill, String revision, List<GroupPlan> groups, List<PlacedLabel> labels, List<KitSection> sections) {

    public TestPlan {
        groups = List.copyOf(groups);
        labels = List.copyOf(labels);
        sections = List.copyOf(sections);
    }

    public Stream<TestRow> rows() {
        return groups.stream().flatMap(group -> group.rows().stream());
    }

    public Stream<Box> boxes() {
        return rows().flatMap(row -> row.boxes().stream());
    }

    public Optional<TestRow> row(String key) {
        return rows().filter(row -> row.key().equals(key)).findFirst();
    }

    public String order() {
        return bill.order().name();
    }
}
