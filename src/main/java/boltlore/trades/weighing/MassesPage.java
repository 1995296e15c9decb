package boltlore.trades.weighing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Removed;
import boltlore.catalogue.Workshop;
import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** What comes off and what each sub-system puts on, and the page that goes to the weighbridge. */
final class MassesPage {

    private static final TableSpec<Removed> REMOVED = TableSpec.<Removed>named("removed")
            .text("removed", "Removed", 50, Removed::says)
            .whole("station", "Behind front axle", "mm", each -> each.at().behindFrontMm())
            .whole("height", "Above road", "mm", each -> each.at().heightMm())
            .decimal("mass", "Mass", "kg", 1, Removed::massKg)
            .box(Column.blank("weighed", "Weighed (kg)"));

    private static final TableSpec<CaseLoads> WEIGHBRIDGE = TableSpec.<CaseLoads>named("weighbridge")
            .said("condition", "Condition", 40, row -> row.loadCase().wording())
            .decimal("front", "Front computed", "kg", 1, row -> row.loads().frontKg())
            .box(Column.blank("front-weighed", "Front weighed (kg)"))
            .decimal("rear", "Rear computed", "kg", 1, row -> row.loads().rearKg())
            .box(Column.blank("rear-weighed", "Rear weighed (kg)"))
            .box(Column.signature("by", "Date and name"));

    private MassesPage() {}

    private static TableSpec<SubSystemLoad> subSystems(Catalogue catalogue) {
        return loads(
                TableSpec.<SubSystemLoad>named("sub-systems")
                        .text(
                                "sub-system",
                                "Sub-system",
                                load -> catalogue.subSystemSays(
                                        load.subSystem(), catalogue.workshop().language())),
                SubSystemLoad::loads);
    }

    static PageBuilder compose(Weighing weighing, Catalogue catalogue, String footer) {
        PageBuilder page = Page.named("Masses").footer(footer).title("Removed and added");
        if (!weighing.removed().isEmpty()) {
            TableBuilder removed = REMOVED.of(weighing.removed());
            removed.total("total", "Removed in all").sum("mass", weighing.removedKg());
            page.heading("Removed from the base vehicle").add(removed);
        }
        OnAxles onAxles = weighing.onAxles();
        if (onAxles != null) {
            int wheelbaseMm = onAxles.chassis().wheelbaseMm();
            List<SubSystemLoad> added = SubSystemLoad.of(weighing, wheelbaseMm);
            page.heading("Added by sub-system")
                    .add(whole(subSystems(catalogue).of(added), added.stream().map(SubSystemLoad::loads)));
            if (!weighing.extras().isEmpty()) {
                page.heading("Added beside the kit").add(extras(wheelbaseMm).of(weighing.extras()));
            }
        }
        return page;
    }

    /** Mass and axle loads, the last three columns of whatever weighs something. */
    static <R> TableSpec<R> loads(TableSpec<R> spec, Function<R, AxleLoads> of) {
        return spec.decimal("mass", "Mass", "kg", 1, row -> of.apply(row).totalKg())
                .decimal("front", "Front axle", "kg", 1, row -> of.apply(row).frontKg())
                .decimal("rear", "Rear axle", "kg", 1, row -> of.apply(row).rearKg());
    }

    /** With a row for the whole kit. */
    static TableBuilder whole(TableBuilder table, Stream<AxleLoads> loads) {
        AxleLoads all = loads.reduce(AxleLoads.NONE, AxleLoads::plus);
        table.total("total", "The whole kit")
                .sum("mass", all.totalKg())
                .sum("front", all.frontKg())
                .sum("rear", all.rearKg());
        return table;
    }

    /** What the order's extras put on the axles. */
    private static TableSpec<ExtraLoad> extras(int wheelbaseMm) {
        return loads(
                TableSpec.<ExtraLoad>named("extras")
                        .text("extra", "Extra of the order", 50, ExtraLoad::says)
                        .whole(
                                "station",
                                "Behind front axle",
                                "mm",
                                extra -> extra.at().behindFrontMm()),
                extra -> extra.on(wheelbaseMm));
    }

    /** Cautions, and boxes for what the weighbridge shows beside what was computed. */
    static PageBuilder weighbridge(OnAxles onAxles, BigDecimal tolerance, Workshop workshop, String footer) {
        PageBuilder page = Page.named("Weighbridge").footer(footer).title("On the weighbridge");
        CautionNotes.always(page, "weighbridge", workshop, workshop.language());
        page.add(WEIGHBRIDGE.of(onAxles.cases().stream()
                .filter(each -> each.loadCase().compareTo(LoadCase.DRIVER) <= 0)
                .toList()));
        page.note(
                "Weigh on level ground, tyres at their pressure, one axle at a time and then the whole vehicle; the two"
                        + " axles must add up to the whole. Where weighed and computed differ by more than "
                        + Digits.plain(tolerance) + " % of the axle's"
                        + " load, look for what is not in the bill, and weigh the parts.");
        return page.signatures("Weighed and measured by", "Witnessed by", "Judged by (engineer)");
    }
}
