package boltlore.trades.bill.sheets;

import boltlore.report.Column;
import java.time.LocalDate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The columns of what is to make. */
final class MakeColumns {

    private MakeColumns() {}

    static Stream<Column> all(@Nullable LocalDate due) {
        return Stream.of(what(), howMany(), when(due), toSign()).flatMap(columns -> columns);
    }

    private static Stream<Column> what() {
        return Stream.of(
                Column.text("part", "Part number").atMost(12),
                Column.text("revision", "Rev.").atMost(4),
                Column.text("name", "Name").atMost(32),
                Column.text("drawing", "Drawing").atMost(12),
                Column.text("issue", "Issue").atMost(5),
                Column.text("material", "Material").atMost(24),
                Column.text("cuts", "Cut for each").atMost(20),
                Column.text("finish", "Finish").atMost(14));
    }

    private static Stream<Column> howMany() {
        return Stream.of(
                Column.quantity("count", "Make"),
                Column.quantity("extra", "Of them extra"),
                Column.quantity("undecided", "Not yet decided"),
                Column.decimal("minutes", "Time", 1).in("min"));
    }

    private static Stream<Column> when(@Nullable LocalDate due) {
        return Stream.of(
                Days.column("release", "Release by", "Release", due), Days.column("need", "Needed by", "Needed", due));
    }

    private static Stream<Column> toSign() {
        return Stream.of(
                Column.blank("inspected", "Inspected").atMost(9), Column.signature("firstOff", "First-off, signature"));
    }
}
