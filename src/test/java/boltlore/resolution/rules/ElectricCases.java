package boltlore.resolution.rules;

import static boltlore.resolution.rules.RuleCase.rule;

import boltlore.catalogue.Role;
import boltlore.measure.PartNumber;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Requirer;
import boltlore.resolution.rules.Facts.Electric;
import boltlore.resolution.rules.Facts.InKit;
import boltlore.resolution.rules.Facts.LabelLanguage;
import boltlore.resolution.rules.Facts.Lead;
import boltlore.resolution.rules.Facts.MarketLists;
import boltlore.resolution.rules.Facts.MarketUses;
import boltlore.resolution.rules.Facts.Use;
import java.math.BigDecimal;
import java.util.List;

/** Rules by which inlet, charger, supply, outlet and market agree. */
final class ElectricCases {

    private static final Electric ELEVEN = Wired.phases(Role.CHARGER, "eleven", 3);
    private static final Electric ONE_PHASE_INLET = Wired.phases(Role.INLET, "type-1", 1);
    private static final Electric ONE_PHASE_SUPPLY = Wired.phases(Role.SUPPLY, "one-phase-32", 1);
    private static final Electric INLET_32 = Wired.amps(Role.INLET, "type-2", "32");
    private static final Electric CHARGER_48 = Wired.amps(Role.CHARGER, "big", "48");
    private static final Electric CHARGER_32 = Wired.amps(Role.CHARGER, "seven", "32");
    private static final Electric OUTLET = Wired.outlet("outlet", "cee-7-3", "230", "16");
    private static final Electric ONE_WAY = Wired.charger("seven", false, "4");
    private static final Electric THREE_KW_OUT = Wired.charger("seven", true, "3");
    private static final LabelLanguage GERMAN = new LabelLanguage("de");

    private static final Requirer LEAD = new Requirer.OfPart(new PartNumber("LEAD"));
    private static final InKit BY_LEAD = new InKit(LEAD);

    private ElectricCases() {}

    private static Lead lead(int phases, String amps) {
        return new Lead("LEAD", LEAD, phases, new BigDecimal(amps));
    }

    static List<RuleCase> all() {
        return List.of(
                rule("A charger with more phases than the inlet charges on the inlet's phases only")
                        .given(ONE_PHASE_INLET, ELEVEN)
                        .concludes(new Finding(FindingKind.CHARGER_PHASES_ABOVE_INLET, "eleven", "type-1"))
                        .butNotWhen(ONE_PHASE_INLET, Wired.phases(Role.INLET, "type-2", 3)),
                rule("A charger with more phases than the inlet charges on the inlet's phases only")
                        .given(ONE_PHASE_INLET, ELEVEN)
                        .concludes(new Finding(FindingKind.CHARGER_PHASES_ABOVE_INLET, "eleven", "type-1"))
                        .butNotWhen(ONE_PHASE_INLET, Wired.plain(Role.INLET, "not-known")),
                rule("A charger with more phases than the supply charges on the supply's phases only")
                        .given(ONE_PHASE_SUPPLY, ELEVEN)
                        .concludes(new Finding(FindingKind.CHARGER_PHASES_ABOVE_SUPPLY, "eleven", "one-phase-32"))
                        .butNotWhen(ONE_PHASE_SUPPLY, Wired.phases(Role.SUPPLY, "three-phase-16", 3)),
                rule("A charger draws no more current than its inlet carries")
                        .given(INLET_32, CHARGER_48)
                        .concludes(new Finding(FindingKind.CHARGER_ABOVE_INLET, "big", "type-2"))
                        .butNotWhen(CHARGER_48, Wired.amps(Role.CHARGER, "big", "32.0")),
                rule("A public lead has as many phases as inlet and charger both take")
                        .given(lead(1, "16"), BY_LEAD, ELEVEN, Wired.phases(Role.INLET, "type-2", 3))
                        .concludes(new Finding(FindingKind.LEAD_PHASES_BELOW_CHARGER, "LEAD", "eleven"))
                        .butNotWhen(Wired.phases(Role.INLET, "type-2", 3), ONE_PHASE_INLET),
                rule("A public lead has as many phases as inlet and charger both take")
                        .given(lead(1, "16"), BY_LEAD, ELEVEN, Wired.phases(Role.INLET, "type-2", 3))
                        .concludes(new Finding(FindingKind.LEAD_PHASES_BELOW_CHARGER, "LEAD", "eleven"))
                        .butNotWithout(BY_LEAD),
                rule("A public lead carries the current that inlet and charger both take")
                        .given(lead(3, "16"), BY_LEAD, INLET_32, CHARGER_32)
                        .concludes(new Finding(FindingKind.LEAD_AMPS_BELOW_CHARGER, "LEAD", "seven"))
                        .butNotWhen(CHARGER_32, Wired.amps(Role.CHARGER, "seven", "16.0")),
                rule("A public lead carries the current that inlet and charger both take")
                        .given(lead(3, "16"), BY_LEAD, INLET_32, CHARGER_32)
                        .concludes(new Finding(FindingKind.LEAD_AMPS_BELOW_CHARGER, "LEAD", "seven"))
                        .butNotWhen(lead(3, "16"), lead(3, "32")),
                rule("An inlet is one that the market uses")
                        .given(Wired.plain(Role.INLET, "type-2"), lists(Use.INLET))
                        .concludes(new Finding(FindingKind.INLET_OF_ANOTHER_MARKET, "type-2", "north"))
                        .butNotWith(new MarketUses(Use.INLET, "type-2")),
                rule("An inlet is one that the market uses")
                        .given(Wired.plain(Role.INLET, "type-2"), lists(Use.INLET))
                        .concludes(new Finding(FindingKind.INLET_OF_ANOTHER_MARKET, "type-2", "north"))
                        .butNotWithout(lists(Use.INLET)),
                rule("An inlet for direct current is one that the market uses")
                        .given(Wired.amps(Role.DC_INLET, "direct-2", "200"), lists(Use.INLET))
                        .concludes(new Finding(FindingKind.DC_INLET_OF_ANOTHER_MARKET, "direct-2", "north"))
                        .butNotWith(new MarketUses(Use.INLET, "direct-2")),
                rule("An inlet for direct current is one that the market uses")
                        .given(Wired.amps(Role.DC_INLET, "direct-2", "200"), lists(Use.INLET))
                        .concludes(new Finding(FindingKind.DC_INLET_OF_ANOTHER_MARKET, "direct-2", "north"))
                        .butNotWhen(Wired.amps(Role.DC_INLET, "direct-2", "200"), Wired.plain(Role.DC_INLET, "none")),
                rule("A V2L outlet is one that the market uses")
                        .given(OUTLET, lists(Use.SOCKET))
                        .concludes(new Finding(FindingKind.V2L_OUTLET_OF_ANOTHER_MARKET, "outlet", "north"))
                        .butNotWith(new MarketUses(Use.SOCKET, "cee-7-3")),
                rule("A V2L outlet is one that the market uses")
                        .given(OUTLET, lists(Use.SOCKET))
                        .concludes(new Finding(FindingKind.V2L_OUTLET_OF_ANOTHER_MARKET, "outlet", "north"))
                        .butNotWhen(OUTLET, Wired.plain(Role.EXPORT, "none")),
                rule("A V2L outlet needs a bidirectional charger")
                        .given(OUTLET, ONE_WAY)
                        .concludes(new Finding(FindingKind.V2L_OUTLET_NEEDS_BIDIRECTIONAL_CHARGER, "outlet", "seven"))
                        .butNotWhen(ONE_WAY, Wired.charger("seven", true, "4")),
                rule("A V2L outlet needs a bidirectional charger")
                        .given(OUTLET, ONE_WAY)
                        .concludes(new Finding(FindingKind.V2L_OUTLET_NEEDS_BIDIRECTIONAL_CHARGER, "outlet", "seven"))
                        .butNotWhen(OUTLET, Wired.plain(Role.EXPORT, "none")),
                rule("A V2L outlet needs a bidirectional charger")
                        .given(OUTLET, Wired.plain(Role.CHARGER, "not-known"))
                        .concludes(
                                new Finding(FindingKind.V2L_OUTLET_NEEDS_BIDIRECTIONAL_CHARGER, "outlet", "not-known"))
                        .butNotWithout(OUTLET),
                rule("A V2L outlet gives no more than the charger may feed out")
                        .given(OUTLET, THREE_KW_OUT)
                        .concludes(new Finding(FindingKind.V2L_OUTLET_ABOVE_CHARGER, "outlet", "seven"))
                        .butNotWhen(THREE_KW_OUT, Wired.charger("seven", true, "3.68")),
                rule("Labels and manual are in a language of the market")
                        .given(GERMAN, lists(Use.LANGUAGE))
                        .concludes(new Finding(FindingKind.LABELS_OF_ANOTHER_MARKET, "de", "north"))
                        .butNotWith(new MarketUses(Use.LANGUAGE, "de")));
    }

    private static MarketLists lists(Use kind) {
        return new MarketLists("north", kind);
    }
}
