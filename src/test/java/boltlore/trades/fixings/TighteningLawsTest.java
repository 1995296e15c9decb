package boltlore.trades.fixings;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What holds for every thread, class and friction, and for every container. */
class TighteningLawsTest {

    private static final String[] THREADS = {"M4", "M5", "M6", "M8", "M8x1", "M10", "M10x1.25", "M12", "M16", "M20"};

    private static Tightening tightening(int thread, PropertyClass propertyClass, BigDecimal friction) {
        return new Tightening(ScrewThread.of(THREADS[thread]).orElseThrow(), propertyClass, friction);
    }

    @Property
    void more_friction_takes_more_torque_for_less_preload(
            @ForAll @IntRange(max = 9) int thread,
            @ForAll PropertyClass propertyClass,
            @ForAll @BigRange(min = "0.05", max = "0.30") @Scale(3) BigDecimal friction) {
        Tightening less = tightening(thread, propertyClass, friction);
        Tightening more = tightening(thread, propertyClass, friction.add(new BigDecimal("0.01")));

        assertThat(more.preloadNewton()).isLessThan(less.preloadNewton());
        assertThat(more.torqueNm().orElseThrow()).isGreaterThan(less.torqueNm().orElseThrow());
    }

    @Property
    void the_preload_stays_below_the_load_at_yield(
            @ForAll @IntRange(max = 9) int thread,
            @ForAll PropertyClass propertyClass,
            @ForAll @BigRange(min = "0.05", max = "0.30") @Scale(3) BigDecimal friction) {
        Tightening tightening = tightening(thread, propertyClass, friction);
        ScrewThread sizes = tightening.thread();
        BigDecimal atYield = sizes.stressAreaMm2()
                .multiply(BigDecimal.valueOf(
                        propertyClass.strength(sizes.diameterMm()).yield()));

        assertThat(tightening.preloadNewton()).isPositive().isLessThan(atYield);
    }

    @Property
    void so_many_pieces_in_any_container_are_counted_again(
            @ForAll @IntRange(max = 500) int pieces,
            @ForAll @BigRange(min = "0.1", max = "200") @Scale(2) BigDecimal one,
            @ForAll @BigRange(min = "0", max = "1000") @Scale(1) BigDecimal tare) {
        BigDecimal gross = tare.add(one.multiply(BigDecimal.valueOf(pieces)));

        assertThat(CountByWeight.count(gross, tare, one)).contains(pieces);
    }

    @Property
    void a_sure_count_is_right_wherever_the_true_mass_lies(
            @ForAll @IntRange(min = 1, max = 500) int pieces,
            @ForAll @BigRange(min = "0.0010", max = "0.2000") @Scale(4) BigDecimal one) {
        BigDecimal count = BigDecimal.valueOf(pieces);
        BigDecimal off = one.ulp().divide(BigDecimal.valueOf(2));

        if (CountByWeight.sure(count, one)) {
            assertThat(CountByWeight.count(one.add(off).multiply(count), BigDecimal.ZERO, one))
                    .contains(pieces);
            assertThat(CountByWeight.count(one.subtract(off).multiply(count), BigDecimal.ZERO, one))
                    .contains(pieces);
        }
    }
}
