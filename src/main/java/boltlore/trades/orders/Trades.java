package boltlore.trades.orders;

import boltlore.findings.Kind;
import boltlore.trades.KitFinding;
import boltlore.trades.Trade;
import boltlore.trades.charging.ChargingTrade;
import boltlore.trades.shipping.ShippingTrade;
import boltlore.trades.testing.TestTrade;
import java.util.List;
import java.util.stream.Stream;

/** All trades, in the order in which a kit passes them. A trade that stands here has its command, sheets and findings. */
public final class Trades {

    public static final List<Trade> ALL = List.of(new ChargingTrade(), new TestTrade(), new ShippingTrade());

    private Trades() {}

    /** Every kind of finding that some trade may have. */
    public static Stream<Kind> kinds() {
        return Stream.concat(Stream.of(KitFinding.values()), ALL.stream().flatMap(trade -> trade.kinds().stream()));
    }
}
