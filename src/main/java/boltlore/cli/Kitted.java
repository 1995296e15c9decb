package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.trades.FoundBy;
import boltlore.trades.costing.PricedBill;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An order's kit as it is told of.
 *
 * @param priced its bill, where it has one
 * @param found by the rules, then by each trade
 * @param written the sheets that were written, or empty
 */
record Kitted(OrderKit kit, @Nullable PricedBill priced, List<FoundBy> found, List<Path> written) {}
