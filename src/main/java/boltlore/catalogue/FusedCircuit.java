package boltlore.catalogue;

import boltlore.measure.PositionName;
import java.math.BigDecimal;

/**
 * A circuit of the 12 V network with a blade fuse of its own in the kit.
 *
 * @param position whose line brings the fuse
 * @param loadAmps that flows for long, in A
 * @param wireMm2 of its thinnest wire
 * @param wireAmps that this wire carries where it lies
 */
public record FusedCircuit(
        String name,
        String says,
        Condition when,
        PositionName position,
        BigDecimal loadAmps,
        BigDecimal wireMm2,
        BigDecimal wireAmps) {}
