package boltlore.trades.weighing;

import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.report.PageBuilder;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import java.util.List;
import java.util.stream.Stream;

/** What a kit does to the weights of its base vehicle, each axle against its limit. */
public final class AxleLoadsTrade extends Trade {

    private static final String TITLE = "Weight statement";

    public AxleLoadsTrade() {
        super(
                "axle-loads",
                Room.ENGINEERING,
                "Calculate axle loads before and after conversion, compare them with the limits, and write a weight"
                        + " statement for each order.",
                "For no order of these can axle loads be calculated.",
                List.of(WeighingFinding.values()),
                List.of(LiftedAxle.OPTION));
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return Outcome.sound(kits.stream()
                .map(kit -> result(kit, options.get(LiftedAxle.OPTION).orElse(List.of())))
                .toList());
    }

    private static TradeResult result(KitInWork kit, List<LiftedAxle> lifted) {
        Weighing weighing = weighing(kit);
        OnAxles onAxles = weighing.onAxles();
        Weighing judged = onAxles == null
                ? weighing
                : weighing.with(new Findings(Stream.concat(
                                weighing.findings().all().stream(),
                                new LiftedPage(lifted, onAxles, weighing.tolerancePercent()).findings().stream())
                        .toList()));
        return TradeResult.of(kit, judged.findings(), () -> report(kit, judged, lifted));
    }

    public static Weighing weighing(KitInWork kit) {
        return kit.once(Weighing.class, own -> Weigher.weigh(own.catalogue(), own.family(), own.bill()));
    }

    static Report report(KitInWork kit) {
        return report(kit, weighing(kit), List.of());
    }

    private static Report report(KitInWork kit, Weighing weighing, List<LiftedAxle> lifted) {
        String footer = KitReport.footer(kit, TITLE);
        ReportBuilder report = KitReport.begin(kit, "weight-statement", TITLE, AxleLoadsTrade.class)
                .found(kit.answered(weighing.findings()));
        OnAxles onAxles = weighing.onAxles();
        if (onAxles != null) {
            report.glance(StatementPage.glance(onAxles).build());
        }
        Growth growth = weighing.growth();
        if (growth != null) {
            report.glance(StatementPage.changes(growth, onAxles).build());
        }
        report.glance(StatementPage.facts(weighing).build());
        PageBuilder page = StatementPage.compose(weighing, kit, footer)
                .also(MassesPage.compose(weighing, kit.catalogue(), footer));
        if (onAxles == null) {
            report.page(page);
        } else {
            PartsPage parts = new PartsPage(weighing, onAxles);
            report.page(page.also(parts.page(footer))).data(parts.all());
            report.page(MassesPage.weighbridge(onAxles, weighing.tolerancePercent(), kit.workshop(), footer)
                    .also(new LiftedPage(lifted, onAxles, weighing.tolerancePercent()).page(kit.workshop(), footer)));
        }
        return report.build();
    }
}
