package boltlore.trades.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Forward, by the moments of a vehicle of known height about the wheels that stay down (textbook statics). */
@Label("The height of the centre of gravity by lifting an axle")
class LiftedAxleLawsTest {

    private static final double WHEELBASE = 2400;
    private static final double RADIUS = 300;
    private static final double MASS = 1500;

    @Property(tries = 200)
    @Label("is found again of a vehicle of any height, whichever axle is lifted")
    void found_again(
            @ForAll @IntRange(min = 350, max = 1500) int height,
            @ForAll @IntRange(min = 240, max = 1440) int lift,
            @ForAll @IntRange(min = 30, max = 70) int frontPercent,
            @ForAll boolean front) {
        double sin = lift / WHEELBASE;
        double cos = Math.sqrt(1 - sin * sin);
        double standingLevel = (front ? 100 - frontPercent : frontPercent) / 100.0 * MASS;
        // From the standing axle along the car, and what the height swings back over it, both measured along the road.
        double along = (1 - standingLevel / MASS) * WHEELBASE * cos - (height - RADIUS) * sin;
        double standing = MASS * (1 - along / (WHEELBASE * cos));
        AxleLoads level = new AxleLoads(
                BigDecimal.valueOf(MASS * frontPercent / 100.0),
                BigDecimal.valueOf(MASS * (100 - frontPercent) / 100.0));
        LiftedAxle measured = new LiftedAxle(front, lift, (int) RADIUS, level, BigDecimal.valueOf(standing));
        assertThat(measured.heightMm((int) WHEELBASE))
                .hasValueSatisfying(found -> assertThat(found.doubleValue()).isCloseTo(height, within(0.001)));
    }
}
