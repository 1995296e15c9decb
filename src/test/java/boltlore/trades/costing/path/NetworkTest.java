package boltlore.trades.costing.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Starts, finishes and slack agree with textbook networks")
class NetworkTest {

    private static List<CheckRow> rows(String network) {
        return CheckTable.all("critical-path.csv")
                .filter(row -> row.text("network").equals(network))
                .toList();
    }

    private static Network<String> network(String name) {
        return new Network<>(rows(name).stream().map(NetworkTest::activity).toList());
    }

    private static Activity<String> activity(CheckRow row) {
        List<String> after = row.has("after") ? Arrays.asList(row.text("after").split(" ", -1)) : List.of();
        return new Activity<>(row.text("activity"), row.number("days").intValueExact(), after);
    }

    static Stream<CheckRow> all() {
        return CheckTable.all("critical-path.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void each_activity_has_the_published_times(CheckRow row) {
        Slot<String> slot = network(row.text("network")).schedule().get(row.text("activity"));
        assertThat(slot).isNotNull();
        assertThat(List.of(
                        slot.earliestStart(),
                        slot.earliestFinish(),
                        slot.latestStart(),
                        slot.latestFinish(),
                        slot.slack()))
                .containsExactlyElementsOf(
                        Stream.of("expected_es", "expected_ef", "expected_ls", "expected_lf", "expected_slack")
                                .map(column -> row.number(column).intValueExact())
                                .toList());
    }

    @ParameterizedTest
    @CsvSource({"foundry, 15", "events-6, 20", "events-9, 38"})
    void the_whole_takes_as_long_as_published(String network, int days) {
        assertThat(network(network).days()).isEqualTo(days);
    }

    @Test
    void the_order_in_which_activities_are_named_changes_nothing() {
        List<Activity<String>> activities = new ArrayList<>(
                rows("events-9").stream().map(NetworkTest::activity).toList());
        Collections.reverse(activities);
        assertThat(new Network<>(activities).schedule())
                .containsExactlyInAnyOrderEntriesOf(network("events-9").schedule());
    }

    @Test
    void nothing_at_all_takes_no_day() {
        assertThat(new Network<String>(List.of()).days()).isZero();
    }

    @Test
    void activities_that_wait_for_one_another_are_refused() {
        assertThatThrownBy(() -> new Network<>(List.of(
                        new Activity<>("A", 1, List.of("B")),
                        new Activity<>("B", 1, List.of("A")),
                        new Activity<>("C", 1, List.of()))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[A, B]");
    }

    @Test
    void an_activity_that_stands_twice_or_waits_for_none_that_is_known_is_refused() {
        Activity<String> one = new Activity<>("A", 1, List.of());
        assertThatThrownBy(() -> new Network<>(List.of(one, one))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Network<>(List.of(new Activity<>("B", 1, List.of("A")))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_day_less_than_none_is_refused() {
        assertThatThrownBy(() -> new Activity<>("A", -1, List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
