package boltlore.trades.orders;

import boltlore.findings.Kind;
import boltlore.findings.Severity;
import boltlore.proof.fits.FitFinding;
import boltlore.trades.KitFinding;
import boltlore.trades.Trade;
import boltlore.trades.braking.BrakingTrade;
import boltlore.trades.charging.ChargingTrade;
import boltlore.trades.coating.CoatingTrade;
import boltlore.trades.cooling.CoolingTrade;
import boltlore.trades.costing.sheets.CostingTrade;
import boltlore.trades.cutting.CuttingTrade;
import boltlore.trades.driving.DrivingTrade;
import boltlore.trades.fixings.FixingsTrade;
import boltlore.trades.mounting.MountingTrade;
import boltlore.trades.picking.PickingTrade;
import boltlore.trades.scheduling.SchedulingTrade;
import boltlore.trades.shipping.ShippingTrade;
import boltlore.trades.spares.SparesTrade;
import boltlore.trades.testing.TestTrade;
import boltlore.trades.weighing.AxleLoadsTrade;
import java.util.List;
import java.util.stream.Stream;

/** All trades, in the order in which a kit passes them. A trade that stands here has its command, sheets and findings. */
public final class Trades {

    public static final List<Trade> ALL = List.of(
            new PickingTrade(),
            new CuttingTrade(),
            new CoatingTrade(),
            new FixingsTrade(),
            new AxleLoadsTrade(),
            new ChargingTrade(),
            new DrivingTrade(),
            new BrakingTrade(),
            new CoolingTrade(),
            new MountingTrade(),
            new TestTrade(),
            new CostingTrade(),
            new ShippingTrade(),
            new SparesTrade(),
            new SchedulingTrade());

    private Trades() {}

    /** Every kind of finding that some trade may have, and those of a kit that does not fit together. */
    public static Stream<Kind> kinds() {
        return Stream.of(
                        Stream.<Kind>of(KitFinding.values()),
                        Stream.<Kind>of(FitFinding.values()).filter(kind -> kind.severity() != Severity.NOTE),
                        ALL.stream().flatMap(trade -> trade.kinds().stream()))
                .flatMap(kinds -> kinds);
    }
}
