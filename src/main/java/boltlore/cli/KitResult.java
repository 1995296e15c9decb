package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.trades.FoundBy;
import boltlore.trades.costing.quote.OrderPricing;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An order's kit as it is told of.
 *
 * @param priced its bill and its price, where it has a bill
 * @param found by the rules, then by each trade
 * @param written the sheets that were written, or empty
 */
record KitResult(OrderKit kit, @Nullable OrderPricing priced, List<FoundBy> found, List<Path> written) {}
