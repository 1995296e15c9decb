package boltlore.trades.orders;

import boltlore.findings.Kind;
import boltlore.trades.KitFinding;
import boltlore.trades.Trade;
import boltlore.trades.charging.ChargingTrade;
import boltlore.trades.spares.SparesTrade;
import java.util.List;
import java.util.stream.Stream;

/** All trades, in the order in which a kit passes them. A trade that stands here has its command, sheets and findings. */
public final class Trades {

    public static final List<Trade> ALL = List.of(new ChargingTrade(), new SparesTrade());

    private Trades() {}

    /** Every kind of finding that some trade may have. */
    public static Stream<Kind> kinds() {
        return Stream.concat(Stream.of(KitFinding.values()), ALL.stream().flatMap(trade -> trade.kinds().stream()));
    }
}
