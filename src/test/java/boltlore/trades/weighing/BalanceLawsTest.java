package boltlore.trades.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What holds for any masses at any stations. */
class BalanceLawsTest {

    /** A mass in kg at its station in mm. */
    record Load(BigDecimal kg, int stationMm) {
        Balance balance() {
            return Balance.of(kg, BigDecimal.valueOf(stationMm));
        }
    }

    @Provide
    Arbitrary<Load> load() {
        Arbitrary<BigDecimal> kg = Arbitraries.bigDecimals()
                .between(new BigDecimal("0.01"), new BigDecimal("2000"))
                .ofScale(2);
        return Combinators.combine(kg, Arbitraries.integers().between(-1500, 5000))
                .as(Load::new);
    }

    @Provide
    Arbitrary<List<Load>> loads() {
        return load().list().ofMinSize(1).ofMaxSize(30);
    }

    private static Balance sum(List<Load> loads) {
        return loads.stream().map(Load::balance).reduce(Balance.NONE, Balance::plus);
    }

    @Property
    void front_and_rear_are_all_there_is(
            @ForAll("loads") List<Load> loads, @ForAll @IntRange(min = 1, max = 6000) int mm) {
        Balance all = sum(loads);
        assertThat(all.on(BigDecimal.valueOf(mm)).totalKg()).isEqualByComparingTo(all.massKg());
    }

    @Property
    void moving_a_mass_rearward_loads_the_rear_axle_and_lightens_the_front_one(
            @ForAll("loads") List<Load> others,
            @ForAll("load") Load moved,
            @ForAll @IntRange(min = 1, max = 3000) int by) {
        BigDecimal wheelbaseMm = BigDecimal.valueOf(2400);
        AxleLoads before = sum(others).plus(moved.balance()).on(wheelbaseMm);
        AxleLoads after = sum(others)
                .plus(new Load(moved.kg(), moved.stationMm() + by).balance())
                .on(wheelbaseMm);
        assertThat(after.rearKg()).isGreaterThan(before.rearKg());
        assertThat(after.frontKg()).isLessThan(before.frontKg());
        assertThat(after.totalKg()).isEqualByComparingTo(before.totalKg());
    }

    @Property
    void taking_a_part_off_and_putting_it_back_changes_nothing(
            @ForAll("loads") List<Load> vehicle, @ForAll("load") Load part) {
        Balance before = sum(vehicle);
        Balance after = before.minus(part.balance()).plus(part.balance());
        assertThat(after.massKg()).isEqualByComparingTo(before.massKg());
        assertThat(after.momentKgMm()).isEqualByComparingTo(before.momentKgMm());
    }

    @Property
    void axle_loads_and_the_balance_of_them_are_the_same_thing(@ForAll("loads") List<Load> vehicle) {
        BigDecimal wheelbaseMm = BigDecimal.valueOf(2400);
        AxleLoads loads = sum(vehicle).on(wheelbaseMm);
        AxleLoads again = Balance.of(loads, wheelbaseMm).on(wheelbaseMm);
        assertThat(again.rearKg().subtract(loads.rearKg()).abs()).isLessThan(new BigDecimal("1e-20"));
    }

    @Property
    void the_centre_of_gravity_lies_between_the_foremost_and_the_rearmost_mass(@ForAll("loads") List<Load> loads) {
        int foremost = loads.stream().mapToInt(Load::stationMm).min().orElseThrow();
        int rearmost = loads.stream().mapToInt(Load::stationMm).max().orElseThrow();
        assertThat(sum(loads).centreMm()).isBetween(BigDecimal.valueOf(foremost), BigDecimal.valueOf(rearmost));
    }
}
