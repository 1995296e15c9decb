package boltlore.catalogue;

import boltlore.measure.Wording;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Tests that are made together.
 *
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
        List<KitTest> tests) {}
