package boltlore.trades.orders;

import boltlore.findings.Kind;
import boltlore.trades.KitFinding;
import boltlore.trades.Trade;
import boltlore.trades.charging.ChargingTrade;
import boltlore.trades.fixings.FixingsTrade;
import boltlore.trades.weighing.AxleLoadsTrade;
import boltlore.trades.coating.CoatingTrade;
import java.util.List;
import java.util.stream.Stream;

/** All trades, in the order in which a kit passes them. A trade that stands here has its command, sheets and findings. */
public final class Trades {

    public static final List<Trade> ALL =
            List.of(new CoatingTrade(), new AxleLoadsTrade(), new ChargingTrade(), new FixingsTrade());

    private Trades() {}

    /** Every kind of finding that some trade may have. */
    public static Stream<Kind> kinds() {
        return Stream.concat(Stream.of(KitFinding.values()), ALL.stream().flatMap(trade -> trade.kinds().stream()));
    }
}
