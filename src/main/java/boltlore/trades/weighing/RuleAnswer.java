package boltlore.trades.weighing;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Chassis;
import boltlore.catalogue.Donor;
import boltlore.catalogue.MarketCondition;
import boltlore.catalogue.MassLimit;
import boltlore.catalogue.RatedMotor;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A condition of the market on the conversion, held against what is known of order, donor and kit.
 *
 * @param found in words; what is missing where nothing can be told
 */
public record RuleAnswer(MarketCondition condition, String found, Answer answer) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** Whether it is met, as far as the program can tell. */
    public enum Answer {
        MET("met, as computed"),
        NOT_MET("not met"),
        NEAR(LimitCheck.Standing.NOT_DECIDED.says()),
        OPEN("for a person to look at");

        private final String says;

        Answer(String says) {
            this.says = says;
        }

        String says() {
            return says;
        }
    }

    /** What a finding of it is about. */
    String subject() {
        return condition.judge().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Of all conditions of the market. */
    static List<RuleAnswer> of(
            MassLimit limit, Bill bill, Catalogue catalogue, @Nullable Donor donor, @Nullable OnAxles onAxles) {
        BigDecimal tolerance = limit.tolerancePercent();
        return limit.conditions().stream()
                .map(each -> switch (each.judge()) {
                    case POWER -> power(each, bill, catalogue, donor);
                    case GROSS_MASS -> loads(each, onAxles, tolerance, Limited.WHOLE);
                    case AXLE_LOADS -> loads(each, onAxles, tolerance, Limited.FRONT, Limited.REAR);
                    case AGE -> age(each, bill);
                    case PERSON -> new RuleAnswer(each, "", Answer.OPEN);
                })
                .toList();
    }

    private static RuleAnswer power(MarketCondition condition, Bill bill, Catalogue catalogue, @Nullable Donor donor) {
        BigDecimal engine = donor == null ? null : donor.engineKw();
        List<BigDecimal> motors = bill.all()
                .map(item -> catalogue.shipping().motors().get(item.part().number()))
                .filter(Objects::nonNull)
                .map(RatedMotor::kw)
                .toList();
        if (engine == null || motors.isEmpty()) {
            String missing = engine == null ? "'engineKw' of the donor in family.json" : "'motors' in shipping.json";
            return new RuleAnswer(condition, "not known: " + missing, Answer.OPEN);
        }
        BigDecimal kw = motors.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal percent = kw.multiply(HUNDRED).divide(engine, MathContext.DECIMAL128);
        boolean low = condition.leastPercent() != null && percent.compareTo(condition.leastPercent()) < 0;
        boolean high = condition.mostPercent() != null && percent.compareTo(condition.mostPercent()) > 0;
        String found = Digits.plain(kw) + " kW for an engine of " + Digits.plain(engine) + " kW, "
                + Digits.upTo(percent, 1) + " %";
        return new RuleAnswer(condition, found, low || high ? Answer.NOT_MET : Answer.MET);
    }

    /** The largest load of the converted vehicle in any load case. */
    private static RuleAnswer loads(
            MarketCondition condition, @Nullable OnAxles onAxles, BigDecimal tolerance, Limited... limited) {
        if (onAxles == null) {
            return new RuleAnswer(condition, "not known: axle loads were not calculated", Answer.OPEN);
        }
        Chassis chassis = onAxles.chassis();
        String found = Arrays.stream(limited)
                .map(each -> each.heading() + " " + most(onAxles, each) + " of " + Digits.plain(each.limitKg(chassis))
                        + " kg")
                .collect(Collectors.joining("; "));
        List<LimitCheck> checks = onAxles.checks().stream()
                .filter(check -> List.of(limited).contains(check.limited()))
                .toList();
        if (checks.stream().anyMatch(LimitCheck::exceeded)) {
            return new RuleAnswer(condition, found, Answer.NOT_MET);
        }
        boolean near = checks.stream().anyMatch(check -> check.standing(tolerance) == LimitCheck.Standing.NOT_DECIDED);
        return new RuleAnswer(condition, found, near ? Answer.NEAR : Answer.MET);
    }

    private static String most(OnAxles onAxles, Limited limited) {
        return onAxles.checks().stream()
                .filter(check -> check.limited() == limited)
                .map(LimitCheck::loadKg)
                .max(BigDecimal::compareTo)
                .map(kg -> Digits.upTo(kg, 1))
                .orElse("?");
    }

    /** By the build date, which first registration cannot lie before; so a donor too young by it is too young. */
    private static RuleAnswer age(MarketCondition condition, Bill bill) {
        LocalDate placed = bill.order().placed();
        if (bill.order().donorBuilt() == null || placed == null || condition.leastYears() == null) {
            return new RuleAnswer(condition, "not known: 'donorBuilt' or 'placed' of the order", Answer.OPEN);
        }
        LocalDate youngest = placed.minusYears(condition.leastYears());
        String found = "built " + bill.order().donorBuilt() + "; registered when?";
        boolean tooYoung = bill.order().donorBuilt().isAfter(youngest);
        return new RuleAnswer(condition, found, tooYoung ? Answer.NOT_MET : Answer.OPEN);
    }
}
