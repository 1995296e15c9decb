package boltlore.trades.driving;

import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.report.Particulars;
import boltlore.report.Report;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.driving.DrivingMaker.Drive;
import java.util.List;

/** How the converted vehicle drives, against what it is sold with. */
public final class DrivingTrade extends Trade {

    private static final String TITLE = "Driving";

    public DrivingTrade() {
        super(
                "driving",
                Room.ENGINEERING,
                "Estimate range, top speed, gradients and acceleration of the converted vehicle, compare them with what is"
                        + " promised, and write a driving sheet for each order.",
                "For no order of these can driving be estimated.",
                List.of(DrivingFinding.values()));
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return Outcome.sound(kits.stream().map(DrivingTrade::work).toList());
    }

    private static TradeResult work(KitInWork kit) {
        Drive drive = DrivingMaker.make(kit);
        ConvertedVehicle vehicle = drive.vehicle();
        return vehicle == null
                ? new TradeResult(kit.order().name(), drive.findings(), List.of())
                : TradeResult.of(kit, drive.findings(), () -> report(vehicle, drive.findings(), kit));
    }

    private static Report report(ConvertedVehicle vehicle, Findings findings, KitInWork kit) {
        String footer = KitReport.footer(kit, TITLE);
        return KitReport.begin(kit, "driving", TITLE, DrivingTrade.class)
                .found(kit.answered(findings))
                .glance(DrivingPage.promises(vehicle).build())
                .glance(DrivingPage.facts(vehicle, kit, Particulars.named("glance"))
                        .build())
                .page(DrivingPage.compose(vehicle, findings, kit, footer).also(DrivingPage.speeds(vehicle, footer)))
                .build();
    }
}
