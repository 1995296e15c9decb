package boltlore.catalogue;

import java.math.BigDecimal;

/** Where a finish is put on. */
public sealed interface CoatedWhere {

    record OwnOven(String oven) implements CoatedWhere {}

    /** Outside, priced by area in m². */
    record OutsideByArea(String coater, BigDecimal pricePerM2) implements CoatedWhere {}

    /** Outside, priced by piece. */
    record OutsideByPiece(String coater, BigDecimal pricePerPiece) implements CoatedWhere {}
}
