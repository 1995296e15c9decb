package boltlore.catalogue.json;

import boltlore.catalogue.Demand;
import boltlore.catalogue.Family;
import boltlore.catalogue.Instrument;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.Scale;
import java.math.BigDecimal;
import java.util.stream.Stream;

/** Every test's instrument can show what the test asks for, in the unit that its limit is worked out in. */
final class TestsCheck {

    private final Reading reading;

    private TestsCheck(Reading reading) {
        this.reading = reading;
    }

    static void check(Family family, Reading reading) {
        TestsCheck check = new TestsCheck(reading);
        family.endOfLine().groups().stream()
                .flatMap(group -> group.tests().stream())
                .filter(test -> family.endOfLine().instruments().containsKey(test.instrument()))
                .forEach(test -> check.test(test, family.endOfLine().instrument(test.instrument())));
    }

    private void test(KitTest test, Instrument instrument) {
        Scale scale = instrument.scale();
        if (test.demand() instanceof Demand.InState) {
            if (scale != null) {
                fault(test, "a state with an instrument that shows " + scale.unit(), "one without 'scale'");
            }
        } else if (scale == null) {
            fault(test, "a number with an instrument that shows none", "an instrument with 'scale'");
        } else {
            number(test, scale);
        }
    }

    private void number(KitTest test, Scale scale) {
        if (test.demand() instanceof Demand.Computed reckoned
                && !scale.unit().equals(reckoned.rule().unit())) {
            String rule = reckoned.rule().written();
            String expected = "one that shows " + reckoned.rule().unit();
            fault(test, "rule '" + rule + "' with an instrument that shows " + scale.unit(), expected);
        }
        limits(test.demand()).filter(limit -> !scale.shows(limit)).forEach(limit -> {
            String range = scale.from().toPlainString() + " to " + scale.to().toPlainString() + " " + scale.unit();
            fault(
                    test,
                    "a limit of " + limit.toPlainString() + " with an instrument from " + range,
                    "one that shows it");
        });
    }

    private static Stream<BigDecimal> limits(Demand demand) {
        if (demand instanceof Demand.AtLeast atLeast) {
            return Stream.of(atLeast.least());
        } else if (demand instanceof Demand.AtMost atMost) {
            return Stream.of(atMost.most());
        }
        return demand instanceof Demand.Between between ? Stream.of(between.least(), between.most()) : Stream.empty();
    }

    private void fault(KitTest test, String found, String expected) {
        reading.faults().add(reading.sources().of(test).fault("test '" + test.name() + "': " + found, expected, ""));
    }
}
