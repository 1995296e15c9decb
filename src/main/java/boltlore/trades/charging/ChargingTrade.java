package boltlore.trades.charging;

import boltlore.catalogue.Electrics;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What power passes, what limits it, and whether the high-voltage system keeps its limits. */
public final class ChargingTrade extends Trade {

    private static final String NUMBER = "(\\d{1,5}(?:\\.\\d{1,3})?)";
    private static final Pattern MAINS =
            Pattern.compile("([13])\\s*[x×]\\s*" + NUMBER + "\\s*V[ ,]*" + NUMBER + "\\s*A", Pattern.CASE_INSENSITIVE);

    /** Mains between line and neutral anywhere in the world, with 10 % either way. */
    private static final BigDecimal LEAST_VOLTS = BigDecimal.valueOf(90);

    private static final BigDecimal MOST_VOLTS = BigDecimal.valueOf(305);
    private static final BigDecimal MOST_AMPS = BigDecimal.valueOf(125);

    private static final TradeOption<Mains> SUPPLY = TradeOption.of(
            "--supply",
            "SUPPLY",
            "Calculate charging at this supply and not at the order's own: phases, volts of one phase, amps, such as"
                    + " '3x230V 16A'.",
            ChargingTrade::supply);
    private static final TradeOption<CableCode> CABLE = TradeOption.of(
            "--cable", "AMPS", "Only with the loose cable of this code: 13, 20, 32 or 63.", ChargingTrade::cable);

    public ChargingTrade() {
        super(
                "charging",
                Room.ENGINEERING,
                "Calculate charging power and time, vehicle-to-load, precharge, isolation, fuses and cables, and write a"
                        + " charging and high-voltage sheet for each order.",
                "For no order of these can charging be calculated.",
                List.of(ChargingFinding.values()),
                List.of(SUPPLY, CABLE));
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return Outcome.sound(kits.stream().map(kit -> work(kit, options)).toList());
    }

    private static TradeResult work(KitInWork kit, Given options) {
        Charging charging = options.has(SUPPLY) || options.has(CABLE)
                ? ChargingCalculation.calculate(
                        kit.family().electrics(),
                        kit.bill(),
                        options.get(SUPPLY).orElse(null),
                        options.get(CABLE).orElse(null))
                : atHome(kit);
        Findings findings = kit.family().electrics().equals(Electrics.NONE)
                ? Findings.of(
                        Finding.of(KitFinding.NOT_JUDGED, "charging", "trade", "Charging", "file", "electrics.json"))
                : charging.findings();
        return TradeResult.of(kit, findings, () -> report(charging, kit));
    }

    /** At the order's own supply, with every cable. */
    public static Charging atHome(KitInWork kit) {
        return kit.once(
                Charging.class,
                own -> ChargingCalculation.calculate(own.family().electrics(), own.bill(), null, null));
    }

    static Report report(Charging charging, KitInWork kit) {
        String title = "Charging and high voltage";
        String footer = KitReport.footer(kit, title);
        ReportBuilder report = KitReport.begin(kit, "charging-and-high-voltage", title, ChargingTrade.class)
                .found(kit.answered(charging.findings()))
                .glance(ChargingPage.ways(charging).build())
                .glance(glance(charging, kit.workshop().language()).build())
                .glance(ChargingPage.kept(charging, kit.workshop().language()).build());
        PageBuilder page = ChargingPage.compose(charging, kit, footer);
        LoomPage.compose(charging, kit.workshop(), footer).ifPresent(page::also);
        report.page(page);
        report.page(HighVoltagePage.compose(charging, kit.workshop(), footer));
        return report.build();
    }

    private static ParticularsBuilder glance(Charging charging, String language) {
        ParticularsBuilder says = Particulars.named("glance");
        BigDecimal isolation = charging.isolationOhm();
        if (isolation != null) {
            says.say("isolation", "Isolation, at least", NumberFormats.ohm(isolation) + " at the highest voltage");
        }
        Export export = charging.export();
        if (export != null) {
            ChargingPage.outlet(charging, export, language)
                    .build()
                    .entries()
                    .forEach(entry -> says.add(entry.key(), entry.label(), entry.kind(), entry.cell()));
        }
        return says;
    }

    /** Reads a supply such as '3x230V 16A': phases, the voltage of one phase, the current of each. */
    private static Outcome<Mains> supply(String text) {
        Matcher matcher = MAINS.matcher(text.strip());
        if (!matcher.matches()) {
            return SUPPLY.refused(
                    "'" + text + "', which is no supply", "phases, volts of one phase and amps, such as '3x230V 16A'");
        }
        BigDecimal volts = new BigDecimal(matcher.group(2));
        BigDecimal amps = new BigDecimal(matcher.group(3));
        if (isOutside(volts, LEAST_VOLTS, MOST_VOLTS)) {
            return SUPPLY.refused(volts + " V across one phase", "from " + LEAST_VOLTS + " to " + MOST_VOLTS + " V");
        }
        return isOutside(amps, BigDecimal.ONE, MOST_AMPS)
                ? SUPPLY.refused(amps + " A in each phase", "from 1 to " + MOST_AMPS + " A")
                : Outcome.sound(new Mains("As asked", Integer.parseInt(matcher.group(1)), volts, amps));
    }

    private static boolean isOutside(BigDecimal number, BigDecimal least, BigDecimal most) {
        return number.compareTo(least) < 0 || number.compareTo(most) > 0;
    }

    /** The code of a cable by its current in A. */
    private static Outcome<CableCode> cable(String text) {
        return Arrays.stream(CableCode.values())
                .filter(code -> String.valueOf(code.amps(3)).equals(text.strip()))
                .findFirst()
                .map(Outcome::sound)
                .orElseGet(() -> CABLE.refused("'" + text + "', which is no code of a cable", "13, 20, 32 or 63"));
    }
}
