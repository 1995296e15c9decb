package boltlore.trades.cooling;

import boltlore.findings.Findings;
import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.FindingsTable;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import boltlore.trades.cooling.CircuitFlow.Drop;
import boltlore.trades.cooling.CircuitFlow.Least;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;

/** The pages: each circuit's flow and temperature; then its pressure drop, part by part. */
final class CoolingPage {

    private static final String FORMULAS =
            "Flow: where pump pressure equals pressure drop. Hoses after Darcy and Weisbach,"
                    + " friction after Haaland, laminar below a Reynolds number of 2300; fittings by dynamic pressures; passages by"
                    + " the square of the flow. Rise: heat / (flow × density × specific heat). Hottest: air of the hottest day and"
                    + " heat over the radiator's W/K. First estimates for the engineer's judgement: measure flow and temperature on"
                    + " the finished vehicle.";

    private CoolingPage() {}

    static PageBuilder compose(List<CircuitFlow> circuits, Findings findings, KitInWork kit, String footer) {
        PageBuilder page = Page.named("Cooling").footer(footer);
        page.title("Cooling").add(KitReport.head(kit, "cooling-head"));
        page.heading("Flow and temperature").add(circuits(circuits)).note(FORMULAS);
        circuits.forEach(flow -> battery(flow).ifPresent(page::note));
        FindingsTable.add(page, kit.answered(findings), kit.workshop().language());
        CautionNotes.always(page, "cooling", kit.workshop(), kit.workshop().language());
        return page.signatures("Checked by");
    }

    /** How its heat comes about, where the battery makes it. */
    private static Optional<String> battery(CircuitFlow flow) {
        return Optional.ofNullable(flow.heat().pack())
                .map(pack -> flow.circuit().says() + ": " + (pack.charging() ? "charged with " : "driven with ")
                        + Digits.upTo(number(pack.amps()), 0) + " A of direct current for "
                        + Digits.upTo(number(pack.minutes()), 0) + " min, until it is "
                        + (pack.charging() ? "full" : "empty") + ". Heat = current² × "
                        + Digits.upTo(number(pack.milliohm()), 1)
                        + " mΩ of the battery. Meanwhile its modules take up heat, so that "
                        + Digits.upTo(number(flow.heat().share() * 100), 0)
                        + " % of the warming are reached: 1 − exp(−W/K × time / (mass × specific heat)), from the air's"
                        + " temperature on. A battery that is warm already, or an old one, gets hotter.");
    }

    /** A page of its own, so that its headings, repeated where it is long, stand above nothing else. */
    static PageBuilder pressureDrop(List<CircuitFlow> circuits, String footer) {
        PageBuilder page = Page.named("Pressure drop").footer(footer).title("Pressure drop");
        page.add(drops(circuits));
        circuits.forEach(
                flow -> page.note(flow.circuit().says() + ": " + flow.circuit().source()));
        circuits.stream()
                .map(CircuitFlow::coolant)
                .distinct()
                .forEach(coolant -> page.note(coolant.says() + ": " + coolant.source()));
        return page;
    }

    static TableBuilder circuits(List<CircuitFlow> circuits) {
        return TableSpec.<CircuitFlow>named("circuits")
                .text("circuit", "Circuit", 34, flow -> flow.circuit().says())
                .decimal("flow", "Flow", "l/min", 1, flow -> number(flow.litresPerMin()))
                .decimal(
                        "least",
                        "At least",
                        "l/min",
                        1,
                        flow -> flow.thirstiest().map(Least::litresPerMin).orElse(null))
                .decimal("pressure", "Pump pressure", "kPa", 1, flow -> number(flow.pumpKpa(flow.litresPerMin())))
                .decimal("heat", "Heat", "W", 0, flow -> number(flow.heat().watts()))
                .decimal("rise", "Rise", "K", 1, flow -> number(flow.rise(flow.litresPerMin())))
                .decimal("air", "Air", "°C", 0, flow -> flow.circuit().airC())
                .decimal("hottest", "Hottest", "°C", 1, flow -> number(flow.hottest()))
                .decimal("most", "At most", "°C", 0, flow -> flow.circuit().mostC())
                .code("name", flow -> flow.circuit().name())
                .of(circuits);
    }

    private static TableBuilder drops(List<CircuitFlow> circuits) {
        TableSpec<Drop> spec = TableSpec.<Drop>named("drops")
                .text("part", "Part of the circuit", 60, Drop::says)
                .decimal("drop", "Pressure drop", "kPa", 2, drop -> number(drop.kpa()));
        TableBuilder table = spec.empty();
        for (CircuitFlow flow : circuits) {
            table.group(flow.circuit().name(), flow.circuit().says());
            flow.drops(flow.litresPerMin()).forEach(drop -> spec.add(table, "", drop));
        }
        return table;
    }

    private static BigDecimal number(double figure) {
        return BigDecimal.valueOf(figure).round(new MathContext(6));
    }
}
