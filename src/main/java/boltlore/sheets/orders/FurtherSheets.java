package boltlore.sheets.orders;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.charging.Charging;
import boltlore.charging.Electrician;
import boltlore.coating.CoatPlanner;
import boltlore.cutting.CutPlanner;
import boltlore.fixings.FixingsMaker;
import boltlore.fixings.KitFixings;
import boltlore.pricing.PricedBill;
import boltlore.resolution.FamilyPlan;
import boltlore.sheets.Workbook;
import boltlore.sheets.charging.ChargeSheet;
import boltlore.sheets.charging.ChargeWords;
import boltlore.sheets.coating.CoatJob;
import boltlore.sheets.coating.HangingSheet;
import boltlore.sheets.cutting.CutSheet;
import boltlore.sheets.fixings.FixingsSheet;
import boltlore.sheets.weighing.WeighSheet;
import boltlore.sheets.weighing.WeighWords;
import boltlore.weighing.Weigher;
import boltlore.weighing.Weighing;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The workbooks of the other trades.
 *
 * @param workbooks each to be made when it is written
 * @param stops what must be mended before the kit goes out, a sentence each
 */
public record FurtherSheets(List<Supplier<Workbook>> workbooks, List<String> stops) {

    public static final FurtherSheets NONE = new FurtherSheets(List.of(), List.of());

    /** Hanging plan, cutting list, weight statement, charging and fixings sheets of an order that nothing stops. */
    public static FurtherSheets of(FamilyPlan plan, PricedBill priced) {
        Catalogue catalogue = plan.catalogue();
        Family family = plan.family();
        Bill bill = priced.bill();
        Weighing weighing = Weigher.of(catalogue, family, bill);
        Charging charging = Electrician.of(family.electrics(), bill, null, null);
        KitFixings fixings = FixingsMaker.of(plan, bill);
        return new FurtherSheets(
                List.of(
                        () -> HangingSheet.of(CoatJob.of(CoatPlanner.of(List.of(bill), catalogue), catalogue)),
                        () -> CutSheet.of(CutPlanner.of(List.of(bill), catalogue, List.of()), catalogue.workshop()),
                        () -> WeighSheet.of(weighing, family, catalogue.workshop()),
                        () -> ChargeSheet.of(charging, catalogue.workshop()),
                        () -> FixingsSheet.of(fixings, catalogue.workshop())),
                Stream.of(WeighWords.stopping(weighing), ChargeWords.stopping(charging), fixings.stopping())
                        .flatMap(List::stream)
                        .toList());
    }
}
