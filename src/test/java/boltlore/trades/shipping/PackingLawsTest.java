package boltlore.trades.shipping;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.sketch.PartSketch;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** What holds of crates whatever goes into them. */
class PackingLawsTest {

    private static ShippedKit kit(List<Integer> masses, List<Integer> order) {
        ShippedKit kit = new ShippedKit();
        for (int i : order) {
            PartSketch part =
                    PartSketch.bought("P-" + i).massKg("" + masses.get(i)).customs("8708.99", "IE");
            kit.part(part, i % 2 == 0 ? "front" : "rear", "bag-" + i % 5, 1 + i % 4);
        }
        return kit;
    }

    private static List<String> written(Shipment shipment) {
        return shipment.crates().stream()
                .map(crate -> crate.number()
                        + crate.type().name()
                        + crate.packed().stream()
                                .map(packed -> packed.goods().name() + "=" + packed.quantity())
                                .toList())
                .toList();
    }

    @Property(tries = 60)
    void the_same_parts_in_any_order_make_the_same_crates(
            @ForAll @Size(min = 1, max = 25) List<@IntRange(min = 1, max = 170) Integer> masses,
            @ForAll Random random) {
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, masses.size()).boxed().toList());
        List<String> before = written(kit(masses, order).shipment());
        Collections.shuffle(order, random);
        assertThat(written(kit(masses, order).shipment())).isEqualTo(before);
    }

    @Property(tries = 60)
    void no_crate_is_above_its_limit(
            @ForAll @Size(min = 1, max = 25) List<@IntRange(min = 1, max = 178) Integer> masses) {
        List<Integer> order = IntStream.range(0, masses.size()).boxed().toList();
        Shipment shipment = kit(masses, order).shipment();
        assertThat(shipment.tooLarge()).isEmpty();
        for (Crate crate : shipment.crates()) {
            assertThat(crate.grossKg()).isLessThanOrEqualTo(new BigDecimal("200"));
        }
    }
}
