package boltlore.resolution.rules;

import boltlore.catalogue.Facts;
import boltlore.catalogue.Hand;
import boltlore.catalogue.Pair;
import boltlore.catalogue.PublicLead;
import boltlore.catalogue.Role;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.resolution.Requirer;
import boltlore.resolution.rules.Facts.ConditionKey;
import boltlore.resolution.rules.Facts.Electric;
import boltlore.resolution.rules.Facts.LabelLanguage;
import boltlore.resolution.rules.Facts.Lead;
import boltlore.resolution.rules.Facts.MarketLists;
import boltlore.resolution.rules.Facts.MarketUses;
import boltlore.resolution.rules.Facts.PairFollows;
import boltlore.resolution.rules.Facts.Use;
import java.util.ArrayList;
import java.util.List;

/** What the chosen values mean through their roles: electrical facts, the market's lists, the wanted hand. */
final class RoleFacts {

    private static final List<Role> ELECTRICAL =
            List.of(Role.INLET, Role.DC_INLET, Role.CHARGER, Role.SUPPLY, Role.EXPORT);

    private RoleFacts() {}

    static List<Object> derive(Choices choices, ConditionKeys keys) {
        List<Object> facts = new ArrayList<>();
        for (Role role : ELECTRICAL) {
            choices.inRole(role).ifPresent(value -> facts.add(electric(role, value.value(), value.facts())));
        }
        for (PublicLead lead : choices.family().electrics().leads()) {
            Requirer asker = new Requirer.OfPart(lead.part());
            facts.add(new Lead(lead.part().text(), asker, lead.phases(), lead.amps()));
        }
        choices.inRole(Role.LANGUAGE).ifPresent(value -> facts.add(new LabelLanguage(value.value())));
        choices.inRole(Role.MARKET).ifPresent(market -> {
            lists(market.value(), Use.INLET, market.facts().inlets(), facts);
            lists(market.value(), Use.SOCKET, market.facts().sockets(), facts);
            lists(market.value(), Use.LANGUAGE, market.facts().languages(), facts);
        });
        for (Pair pair : choices.family().pairs()) {
            if (pair instanceof Pair.One one) {
                follows(one, choices, keys, facts);
            }
        }
        return facts;
    }

    private static Electric electric(Role role, String value, Facts facts) {
        return new Electric(
                role,
                value,
                facts.phases() == null ? 0 : facts.phases(),
                facts.amps(),
                facts.volts(),
                facts.socket(),
                facts.twoWay(),
                facts.exportKw());
    }

    private static void lists(String market, Use kind, List<String> names, List<Object> facts) {
        if (names.isEmpty()) {
            return;
        }
        facts.add(new MarketLists(market, kind));
        names.forEach(name -> facts.add(new MarketUses(kind, name)));
    }

    private static void follows(Pair.One pair, Choices choices, ConditionKeys keys, List<Object> facts) {
        ConditionKey due = keys.of(pair.due());
        Choice chosen = new Choice(pair.follows(), choices.value(pair.follows()).orElse(""));
        if (chosen.value().equals(pair.leftValue())) {
            facts.add(new PairFollows(pair.name(), Hand.LEFT, Hand.RIGHT, due));
        } else if (chosen.value().equals(pair.rightValue())) {
            facts.add(new PairFollows(pair.name(), Hand.RIGHT, Hand.LEFT, due));
        }
    }
}
