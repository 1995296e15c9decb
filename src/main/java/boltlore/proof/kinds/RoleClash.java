package boltlore.proof.kinds;

import boltlore.catalogue.Facts;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.logic.All;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;

/**
 * Values of two options, by their roles, that do not go together.
 *
 * @param clash whether a value of the first and one of the second do not
 * @param says the finding as a sentence, with %1$s and %2$s for the two values
 */
record RoleClash(
        FindingKind finding,
        Role first,
        Role second,
        BiPredicate<OptionValue, OptionValue> clash,
        String holds,
        String mend,
        String says)
        implements FindingStatements {

    static final RoleClash V2L_OUTLET_OF_ANOTHER_MARKET = new RoleClash(
            FindingKind.V2L_OUTLET_OF_ANOTHER_MARKET,
            Role.EXPORT,
            Role.MARKET,
            (outlet, market) -> isOther(outlet.facts().socket(), market.facts().sockets()),
            "Every V2L outlet is one that its market uses.",
            "Add a limit that keeps the socket out of the market, or list it among the market's sockets.",
            "A valid order has V2L outlet %1$s in market %2$s, which does not use it.");

    static final RoleClash V2L_OUTLET_NEEDS_BIDIRECTIONAL_CHARGER = new RoleClash(
            FindingKind.V2L_OUTLET_NEEDS_BIDIRECTIONAL_CHARGER,
            Role.EXPORT,
            Role.CHARGER,
            (outlet, charger) -> outlet.facts().socket() != null
                    && !Boolean.TRUE.equals(charger.facts().twoWay()),
            "Every V2L outlet comes with a bidirectional charger.",
            "Add a limit that a V2L outlet comes with a bidirectional charger.",
            "A valid order has V2L outlet %1$s with charger %2$s, which is not bidirectional.");

    static final RoleClash V2L_OUTLET_ABOVE_CHARGER = new RoleClash(
            FindingKind.V2L_OUTLET_ABOVE_CHARGER,
            Role.EXPORT,
            Role.CHARGER,
            (outlet, charger) -> givesMore(outlet.facts(), charger.facts().exportKw()),
            "No V2L outlet gives more than the charger may feed out.",
            "Add a limit that keeps the two apart, or correct the socket's amps or the charger's export rating.",
            "A valid order has V2L outlet %1$s, which gives more than charger %2$s may feed out.");

    static final RoleClash CHARGER_ABOVE_INLET = new RoleClash(
            FindingKind.CHARGER_ABOVE_INLET,
            Role.CHARGER,
            Role.INLET,
            (charger, inlet) -> isAbove(charger.facts().amps(), inlet.facts().amps()),
            "No charger draws more current than its inlet carries.",
            "Add a limit that keeps this charger from this inlet, or correct the amps of one of them.",
            "A valid order has charger %1$s, which draws more current than inlet %2$s carries.");

    static final RoleClash CHARGER_PHASES_ABOVE_INLET = new RoleClash(
            FindingKind.CHARGER_PHASES_ABOVE_INLET,
            Role.CHARGER,
            Role.INLET,
            (charger, inlet) -> hasMorePhases(charger.facts(), inlet.facts()),
            "No charger has more phases than the inlet it charges through.",
            "Add a limit that keeps the two apart, or accept that the charger runs on fewer phases.",
            "A valid order has charger %1$s with more phases than inlet %2$s, so it charges on fewer.");

    static final RoleClash CHARGER_PHASES_ABOVE_SUPPLY = new RoleClash(
            FindingKind.CHARGER_PHASES_ABOVE_SUPPLY,
            Role.CHARGER,
            Role.SUPPLY,
            (charger, supply) -> hasMorePhases(charger.facts(), supply.facts()),
            "No charger has more phases than the customer's supply.",
            "Add a limit that keeps the two apart, or accept that the charger runs on fewer phases.",
            "A valid order has charger %1$s with more phases than supply %2$s, so it charges on fewer.");

    static final RoleClash INLET_OF_ANOTHER_MARKET = new RoleClash(
            FindingKind.INLET_OF_ANOTHER_MARKET,
            Role.INLET,
            Role.MARKET,
            (inlet, market) -> isOther(inlet.value(), market.facts().inlets()),
            "Every inlet is one that its market uses.",
            "Add a limit that keeps the inlet out of the market, or list it among the market's inlets.",
            "A valid order has inlet %1$s in market %2$s, which does not use it.");

    /** An inlet for direct current alone; a value without amps is none. */
    static final RoleClash DC_INLET_OF_ANOTHER_MARKET = new RoleClash(
            FindingKind.DC_INLET_OF_ANOTHER_MARKET,
            Role.DC_INLET,
            Role.MARKET,
            (inlet, market) -> inlet.facts().amps() != null
                    && isOther(inlet.value(), market.facts().inlets()),
            "Every DC inlet is one that its market uses.",
            "Add a limit that keeps the DC inlet out of the market, or list it among the market's inlets.",
            "A valid order has DC inlet %1$s in market %2$s, which does not use it.");

    /** Labels and manuals. */
    static final RoleClash LABELS_OF_ANOTHER_MARKET = new RoleClash(
            FindingKind.LABELS_OF_ANOTHER_MARKET,
            Role.LANGUAGE,
            Role.MARKET,
            (language, market) -> isOther(language.value(), market.facts().languages()),
            "Labels and manuals are always in a language of the market.",
            "Add a limit that ties the language to the market, or list the language among the market's.",
            "A valid order has labels in %1$s in market %2$s, which asks for another language.");

    /** Whether there is one, and the market names those that it uses, but not it. */
    private static boolean isOther(@Nullable String one, List<String> used) {
        return one != null && !used.isEmpty() && !used.contains(one);
    }

    private static boolean isAbove(@Nullable BigDecimal draws, @Nullable BigDecimal carries) {
        return draws != null && carries != null && draws.compareTo(carries) > 0;
    }

    private static boolean givesMore(Facts outlet, @Nullable BigDecimal feedsKw) {
        return outlet.volts() != null
                && outlet.amps() != null
                && isAbove(outlet.volts().multiply(outlet.amps()).movePointLeft(3), feedsKw);
    }

    /** Whether a charger has more phases than what it hangs on, where that is known. */
    private static boolean hasMorePhases(Facts charger, Facts source) {
        Integer wanted = charger.phases();
        Integer there = source.phases();
        return wanted != null && there != null && there > 0 && wanted > there;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return false;
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return clashing(kit, first, second, clash, says);
    }

    /** A finding for each two values that clash: the first is its subject, the second its detail. */
    static List<PossibleFinding> clashing(
            KitView kit, Role first, Role second, BiPredicate<OptionValue, OptionValue> clash, String says) {
        Optional<Option> one = kit.family().inRole(first);
        Optional<Option> other = kit.family().inRole(second);
        List<PossibleFinding> all = new ArrayList<>();
        for (OptionValue left : one.map(Option::values).orElse(List.of())) {
            for (OptionValue right : other.map(Option::values).orElse(List.of())) {
                if (clash.test(left, right)) {
                    all.add(PossibleFinding.of(
                            left.value(),
                            right.value(),
                            All.of(
                                    Value.is(one.orElseThrow().name(), left.value()),
                                    Value.is(other.orElseThrow().name(), right.value())),
                            List.of(),
                            String.format(Locale.ROOT, says, left.value(), right.value())));
                }
            }
        }
        return all;
    }
}
