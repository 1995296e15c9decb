package boltlore.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.measure.PartNumber;
import boltlore.order.LeftOut;
import boltlore.resolution.Kit;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import java.math.BigDecimal;
import java.util.SortedMap;
import java.util.TreeMap;

/** Compares what the rules resolve with what the oracle does: lines, quantities, reasons, findings, all the rest. */
public final class Agreement {

    private final Resolver resolver;
    private final Oracle oracle;

    public Agreement(Catalogue catalogue) {
        this.resolver = new RuleResolver(catalogue);
        this.oracle = new Oracle(catalogue);
    }

    public Resolver resolver() {
        return resolver;
    }

    public static Resolution.Resolved resolved(Outcome<Resolution> outcome) {
        assertThat(outcome.faults()).isEmpty();
        return (Resolution.Resolved) ((Outcome.Sound<Resolution>) outcome).value();
    }

    /** With nothing left out, and with all unused brackets left out. */
    public void on(Choices choices) {
        on(choices, new LeftOut.Undecided());
        on(choices, new LeftOut.AllUnused());
    }

    /** What the oracle says, with which the rules agree. */
    public Resolution.Resolved on(Choices choices, LeftOut leftOut) {
        Resolution.Resolved expected = oracle.resolve(choices, leftOut);
        Resolution.Resolved byRules = resolved(resolver.resolve(choices, leftOut));
        String which = leftOut.getClass().getSimpleName() + " " + choices;

        assertThat(byRules.findings()).as("findings, %s", which).isEqualTo(expected.findings());
        same(which, byRules.kit(), expected.kit());
        return expected;
    }

    private static void same(String which, Kit byRules, Kit expected) {
        assertThat(byRules.lines()).as("lines, %s", which).isEqualTo(expected.lines());
        assertThat(byRules.leftOut()).as("left out, %s", which).isEqualTo(expected.leftOut());
        assertThat(byRules.unused()).as("unused, %s", which).isEqualTo(expected.unused());
        assertThat(byRules.filled()).as("filled, %s", which).isEqualTo(expected.filled());
        assertThat(byRules.reasons()).as("reasons, %s", which).isEqualTo(expected.reasons());
        assertThat(plain(byRules.quantities())).as("quantities, %s", which).isEqualTo(plain(expected.quantities()));
        assertThat(byRules.finishes()).as("finishes, %s", which).isEqualTo(expected.finishes());
        assertThat(byRules.cautions()).as("cautions, %s", which).isEqualTo(expected.cautions());
    }

    /** Quantities that can be compared: 1.0 is 1. */
    public static SortedMap<PartNumber, BigDecimal> plain(SortedMap<PartNumber, BigDecimal> quantities) {
        SortedMap<PartNumber, BigDecimal> plain = new TreeMap<>(quantities);
        plain.replaceAll((part, quantity) -> quantity.stripTrailingZeros());
        return plain;
    }
}
