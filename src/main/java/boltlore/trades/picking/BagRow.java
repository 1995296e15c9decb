package boltlore.trades.picking;

import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.util.List;

/**
 * One part in one finish in one bag or crate.
 *
 * @param bag bag or crate, or empty where it is packed loose
 * @param quantity of this stage and bag, without spares
 * @param cautions codes of its own and its contents' cautions that stand on a picking list
 */
public record BagRow(
        String bag, Part part, String finish, BigDecimal quantity, BigDecimal spares, List<String> cautions) {}
