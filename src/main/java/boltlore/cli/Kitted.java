package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.trades.costing.PricedBill;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An order's kit as it is told of.
 *
 * @param priced its bill, where it has one
 * @param stops what the further trades found that must be mended, a sentence each
 * @param written the sheets that were written, or empty
 */
record Kitted(OrderKit kit, @Nullable PricedBill priced, List<String> stops, List<Path> written) {}
