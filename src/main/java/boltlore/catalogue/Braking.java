package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a family says about its brakes: exactly one of each belongs to an order. */
public record Braking(List<Brakes> brakes, List<Vacuum> vacuums) {

    /** Of a family that says nothing about brakes. */
    public static final Braking NONE = new Braking(List.of(), List.of());

    /** The class of vehicle that the vehicle's approval goes by. */
    public enum Category {
        /** For passengers, up to eight beside the driver. */
        M1,
        /** For goods, up to 3.5 t. */
        N1
    }

    /**
     * How the braking force is shared between the axles.
     *
     * @param frontPercent share of the braking force on the front axle
     * @param kneeKn braking force of the whole vehicle at which a valve begins to spare the rear axle; null without one
     * @param beyondFrontPercent share on the front axle of what comes on top of that
     */
    public record Brakes(
            Condition when,
            Category category,
            BigDecimal frontPercent,
            @Nullable BigDecimal kneeKn,
            @Nullable BigDecimal beyondFrontPercent,
            String source) {}

    /**
     * The vacuum that helps the driver brake; depressions in kPa below the air outside.
     *
     * @param reservoirLitres of the reservoir
     * @param restLitres of the servo's front chamber and hoses at rest
     * @param strokeLitres air that one full application lets in
     * @param cutInKpa depression at which the pump starts
     * @param cutOutKpa depression at which it stops
     * @param leastKpa depression that still helps enough
     * @param applications with a dead pump that the workshop wants at least
     * @param pumpLitresPerMin that the pump moves
     * @param exponent 1 where the air that comes in cools at once, 1.4 where it does not
     */
    public record Vacuum(
            Condition when,
            BigDecimal reservoirLitres,
            BigDecimal restLitres,
            BigDecimal strokeLitres,
            BigDecimal cutInKpa,
            BigDecimal cutOutKpa,
            BigDecimal leastKpa,
            int applications,
            BigDecimal pumpLitresPerMin,
            BigDecimal exponent,
            String source) {}
}
