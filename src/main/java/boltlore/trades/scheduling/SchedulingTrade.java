package boltlore.trades.scheduling;

import boltlore.catalogue.Capacity;
import boltlore.catalogue.Capacity.OpenHours;
import boltlore.catalogue.Capacity.WorkCentre;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.trades.KitInWork;
import boltlore.trades.Room;
import boltlore.trades.StoppedOrder;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.TradeResult.Sheet;
import boltlore.trades.scheduling.finite.DispatchRule;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** When many orders are finished with what the work centres can do, and in which weeks that is too little. */
public final class SchedulingTrade extends Trade {

    private static final Pattern MORE_HOURS = Pattern.compile("([a-z0-9-]+)=([0-9]{1,4}(\\.[0-9]{1,2})?)");

    private static final TradeOption<LocalDate> ON = TradeOption.date(
            "--on",
            "The day of the plan (2026-06-01); work begins the next morning. Without it today, of one order its own date.");
    private static final TradeOption<DispatchRule> RULE = TradeOption.of(
            "--rule",
            "RULE",
            "What a free station takes first: " + rules() + ". Without it " + DispatchRule.EARLIEST_DUE.written() + ".",
            SchedulingTrade::rule);
    private static final TradeOption<Map<String, BigDecimal>> ADD_HOURS = new TradeOption<>(
            "--add-hours",
            "CENTRE=HOURS",
            "Also say what so many more hours a week at a work centre would change: 'weld=20'.",
            true,
            false,
            SchedulingTrade::added);

    /** Among the sheets of one kit is none of this trade: dates of an empty workshop are no promise. */
    private static final TradeOption<Boolean> WITH_KIT = TradeOption.flag("--with-kit", "");

    public SchedulingTrade() {
        super(
                "schedule",
                Room.FABRICATION,
                "Plan when several orders are finished with the hours that the work centres have, and show the load of each"
                        + " week.",
                "No order of these can be planned.",
                List.of(SchedulingFinding.values()),
                List.of(ON, RULE, ADD_HOURS));
    }

    /** To plan from a day on, of one order too. */
    public static Given from(LocalDate day) {
        return Given.NONE.with(ON, day);
    }

    @Override
    public Given forKit() {
        return Given.NONE.with(WITH_KIT, true);
    }

    @Override
    public List<Fault> faults(Given options, Catalogue catalogue) {
        Capacity capacity = catalogue.capacity();
        List<Fault> faults = new ArrayList<>();
        if (capacity != null) {
            options.get(ADD_HOURS).orElse(Map.of()).forEach((name, hours) -> {
                WorkCentre centre = capacity.centres().stream()
                        .filter(known -> known.name().equals(name))
                        .findFirst()
                        .orElse(null);
                OpenHours open = centre == null ? null : centre.open();
                if (open == null) {
                    List<String> known = capacity.centres().stream()
                            .filter(each -> each.open() != null)
                            .map(WorkCentre::name)
                            .toList();
                    faults.add(Fault.of(
                            ADD_HOURS.name(),
                            "'" + name + "'",
                            "a work centre with hours: " + String.join(", ", known),
                            Nearest.advice(name, known, "")));
                } else if (!WorkPlan.fits(open, hours)) {
                    faults.add(Fault.of(
                            ADD_HOURS.name(),
                            hours.toPlainString() + " more hours a week for '" + name + "'",
                            "no more than its " + open.stations() + " stations have within 24 hours a day",
                            "Add a station in workshop/capacity.json."));
                }
            });
        }
        return faults;
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return work(kits, List.of(), options);
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, List<StoppedOrder> stopped, Given options) {
        Capacity capacity = kits.get(0).catalogue().capacity();
        if (capacity == null) {
            return Outcome.sound(List.of(new TradeResult("", SchedulingFindings.noCapacity(), List.of())));
        }
        // One order without a day is planned as its price sees it: from its own date.
        boolean alone = kits.size() + stopped.size() == 1 && !options.has(ON);
        LocalDate on =
                alone ? kits.get(0).day() : options.get(ON).orElse(kits.get(0).today());
        DispatchRule rule = options.get(RULE).orElse(DispatchRule.EARLIEST_DUE);
        Map<String, BigDecimal> added = options.get(ADD_HOURS).orElse(Map.of());
        WorkPlan plan = WorkPlan.of(kits, capacity, on, rule, added);
        List<WeekLoad> loads = WeekLoad.of(plan);
        Findings findings = (alone ? SchedulingFindings.leadTime(plan) : Findings.NONE)
                .and(SchedulingFindings.together(plan, loads))
                .and(stopped.stream().map(StoppedOrder::finding).collect(Findings.collected()));
        if (options.has(WITH_KIT)) {
            return Outcome.sound(List.of(new TradeResult("", findings, List.of())));
        }
        WorkPlan before = added.isEmpty() ? plan : WorkPlan.of(kits, capacity, on, rule, Map.of());
        ScheduleReport report = new ScheduleReport(plan, before, added, loads, findings);
        return Outcome.sound(List.of(new TradeResult("", findings, List.of(Sheet.of(report::compose)))));
    }

    private static String rules() {
        return Arrays.stream(DispatchRule.values()).map(DispatchRule::written).collect(Collectors.joining(", "));
    }

    private static Outcome<DispatchRule> rule(String written) {
        return Arrays.stream(DispatchRule.values())
                .filter(rule -> rule.written().equals(written))
                .findFirst()
                .map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(Fault.of("--rule", "'" + written + "'", "one of " + rules(), "")));
    }

    private static Outcome<Map<String, BigDecimal>> added(List<String> texts) {
        Map<String, BigDecimal> added = new TreeMap<>();
        List<Fault> faults = new ArrayList<>();
        for (String text : texts) {
            Matcher matcher = MORE_HOURS.matcher(text);
            if (matcher.matches()) {
                added.merge(matcher.group(1), new BigDecimal(matcher.group(2)), BigDecimal::add);
            } else {
                faults.add(Fault.of(
                        "--add-hours", "'" + text + "'", "a work centre and hours a week, such as weld=20", ""));
            }
        }
        return faults.isEmpty() ? Outcome.sound(added) : Outcome.faulty(faults);
    }
}
