package boltlore.trades.picking;

import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.util.List;

/**
 * One part in one finish, as stores pick it.
 *
 * @param finish or empty where it is not coated
 * @param quantity for the whole kit, without spares
 * @param byStage the same quantity by fit stage, in fitting order
 * @param spares to add for the bags: of small fixings and their washers, 5 % of each bag, at least one
 * @param cautions codes of its own and its contents' cautions that stand on a picking list
 * @param measured whether it, or something inside it, is cut to one vehicle
 */
public record PickRow(
        Part part,
        String finish,
        BigDecimal quantity,
        List<StageQuantity> byStage,
        BigDecimal spares,
        List<String> cautions,
        boolean measured) {}
