package boltlore.proof;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.logic.OrderCounter;
import boltlore.logic.Truth;
import java.math.BigInteger;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Numbers of valid orders that the literature gives, found three times: by a diagram, by another, by trying all. */
class WorkedCountsTest {

    static Stream<CheckRow> counts() {
        return CheckTable.all("proof-examples.csv")
                .filter(row -> row.text("about").equals("count"));
    }

    @ParameterizedTest
    @MethodSource("counts")
    void a_count_is_as_published(CheckRow row) {
        Family family = WorkedFamilies.catalogue().family(row.text("family"));
        Condition condition = WorkedFamilies.condition(row.text("of"));
        BigInteger expected = row.number("expected").toBigIntegerExact();

        assertThat(tried(family, condition)).isEqualTo(expected);
        if (!family.name().endsWith("-8")) {
            assertThat(counted(family, condition, false)).isEqualTo(new Count.Exactly(expected));
            assertThat(counted(family, condition, true)).isEqualTo(new Count.Exactly(expected));
        }
    }

    /** The diagrams of eight queens and of the series of eight take longer than a test should. */
    private static Count counted(Family family, Condition condition, boolean backwards) {
        return new OrderCounter(family, family.limits(), Deadline.NONE, backwards).with(condition);
    }

    private static BigInteger tried(Family family, Condition condition) {
        long holding = PlainVariants.list(family).orElseThrow().stream()
                .filter(variant -> new Truth(variant).of(condition))
                .count();
        return BigInteger.valueOf(holding).multiply(PlainVariants.ordersEach(family));
    }
}
