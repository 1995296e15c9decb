package boltlore.catalogue;

import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Tests that are made together.
 *
 * @param minutes that the whole group takes with one kit; 0 where nobody says
 * @param circuit what the high-voltage circuit is like meanwhile, or null where nobody says
 * @param before who may do it, and what must be so before it begins
 * @param cautions codes of the workshop's cautions
 */
public record TestGroup(
        String name,
        Wording says,
        @Nullable Circuit circuit,
        Wording before,
        List<String> cautions,
        List<KitTest> tests,
        BigDecimal minutes) {

    /** Of which nobody says how long it takes. */
    public TestGroup(
            String name,
            Wording says,
            @Nullable Circuit circuit,
            Wording before,
            List<String> cautions,
            List<KitTest> tests) {
        this(name, says, circuit, before, cautions, tests, BigDecimal.ZERO);
    }
}
