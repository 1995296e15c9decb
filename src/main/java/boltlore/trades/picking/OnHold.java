package boltlore.trades.picking;

import boltlore.catalogue.Part;
import boltlore.measure.LineName;
import java.math.BigDecimal;
import java.util.List;

/**
 * What must not be picked until the order says what becomes of a bracket that carries nothing.
 *
 * @param finish or empty where it is not coated
 * @param quantity that the kit loses if all undecided brackets are left out
 * @param brackets the undecided bracket lines that it belongs to
 */
public record OnHold(Part part, String finish, BigDecimal quantity, List<LineName> brackets) {}
