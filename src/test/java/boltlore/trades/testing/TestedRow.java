package boltlore.trades.testing;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Demand;
import boltlore.catalogue.FoundState;
import boltlore.catalogue.Instrument;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.LimitRule;
import boltlore.catalogue.Scale;
import boltlore.catalogue.TestGroup;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One line of a test sheet with what was written into its boxes, judged on 31 March 2026. */
final class TestedRow {

    static final LocalDate TODAY = LocalDate.of(2026, 3, 31);

    /** Between empty and full. */
    private static final Limit.Between PACK = new Limit.Between(new BigDecimal("288"), new BigDecimal("403.2"));

    private final TestRow row;
    private final List<Reading> readings = new ArrayList<>();

    private TestedRow(TestRow row) {
        this.row = row;
    }

    /** A meter from 0 to 20 ohm. */
    static TestedRow ohm(Limit limit) {
        return new TestedRow(row(limit, new Demand.AtMost(BigDecimal.ONE), scale("ohm", "20"), "ohm", null));
    }

    static TestedRow state(FoundState wanted) {
        return new TestedRow(row(new Limit.InState(wanted), new Demand.InState(wanted), null, "", null));
    }

    static TestedRow isolation(String limitKohm, String suitedOhm) {
        Demand demand = new Demand.Computed(LimitRule.ISOLATION, BigDecimal.ZERO);
        Limit limit = new Limit.AtLeast(new BigDecimal(limitKohm));
        return new TestedRow(row(limit, demand, volts(), "kohm", new BigDecimal(suitedOhm)));
    }

    static TestedRow precharge(String percent) {
        Demand demand = new Demand.Computed(LimitRule.PRECHARGE_VOLTS, BigDecimal.ZERO);
        return new TestedRow(row(new Limit.AtLeast(new BigDecimal(percent)), demand, scale("V", "1000"), "%", null));
    }

    private static Scale volts() {
        return new Scale("V", BigDecimal.ZERO, new BigDecimal("1000"), new BigDecimal("0.1"));
    }

    private static Scale scale(String unit, String to) {
        return new Scale(unit, BigDecimal.ZERO, new BigDecimal(to), new BigDecimal("0.001"));
    }

    private static TestRow row(
            Limit limit, Demand demand, @Nullable Scale scale, String unit, @Nullable BigDecimal suitedOhm) {
        Wording says = Wording.english("Test");
        Instrument instrument = new Instrument("meter", says, scale);
        KitTest test = new KitTest("test", says, Condition.ALWAYS, List.of(), false, says, "meter", demand, null);
        TestGroup group = new TestGroup("group", says, null, says, List.of(), List.of(test));
        List<Box> boxes = Boxes.lay("test", test, instrument);
        return new TestRow("test", group, test, null, instrument, limit, "", unit, suitedOhm, PACK, boxes);
    }

    TestedRow read(String value, String unit) {
        return read("test", value, unit, "2026-03-30");
    }

    TestedRow read(String box, String value, String unit, String on) {
        return write(new Reading(box, value, unit, "M-7", "R. Oakes", on, "record.csv", 2, "value"));
    }

    TestedRow write(Reading reading) {
        readings.add(reading);
        return this;
    }

    /** A whole isolation measurement on one day: voltages in V, resistor in kohm, the meter's own resistance in Mohm. */
    TestedRow measured(String vb, String v1, String v1WithResistor, String kohm, String meterMohm) {
        return read("test.vb", vb, "V", "2026-03-30")
                .read("test.v1", v1, "V", "2026-03-30")
                .read("test.v2", otherPole(vb, v1), "V", "2026-03-30")
                .read("test.v1-ro", v1WithResistor, "V", "2026-03-30")
                .read("test.ro", kohm, "kohm", "2026-03-30")
                .read("test.meter", meterMohm, "Mohm", "2026-03-30");
    }

    /** As a meter that loads nothing shows it. */
    private static String otherPole(String vb, String v1) {
        return new BigDecimal(vb)
                .subtract(new BigDecimal(v1))
                .max(BigDecimal.ZERO)
                .toPlainString();
    }

    JudgedRow judged() {
        return judged("en");
    }

    JudgedRow judged(String language) {
        return new RowJudge(row, language, TODAY).judged(readings);
    }

    Judgement judgement() {
        return judged().judgement();
    }

    /** Kinds of the flaws that make it unreadable. */
    List<Flaw.Kind> flaws() {
        return judgement() instanceof Judgement.Unreadable unreadable
                ? unreadable.flaws().stream().map(Flaw::kind).toList()
                : List.of();
    }
}
