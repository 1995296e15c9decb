package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.trades.costing.quote.OrderPricing;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An order's kit as it is told of.
 *
 * @param priced its bill and its price, where it has a bill
 * @param stops what the further trades found that must be mended, a sentence each
 * @param written the sheets that were written, or empty
 */
record Kitted(OrderKit kit, @Nullable OrderPricing priced, List<String> stops, List<Path> written) {}
