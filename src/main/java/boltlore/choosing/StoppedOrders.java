package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.Role;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choices.Mentions;
import boltlore.logic.All;
import boltlore.measure.OptionName;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which orders a finding stops, besides the one that it was found in: all with the same values of what it looks at. */
final class StoppedOrders {

    private static final Map<FindingKind, Set<Role>> LOOKS_AT = Map.of(
            FindingKind.EXPORT_SOCKET_OF_ANOTHER_MARKET, Set.of(Role.EXPORT, Role.MARKET),
            FindingKind.EXPORT_NEEDS_TWO_WAY_CHARGER, Set.of(Role.EXPORT, Role.CHARGER),
            FindingKind.EXPORT_ABOVE_RATING, Set.of(Role.EXPORT, Role.CHARGER),
            FindingKind.CHARGER_ABOVE_INLET, Set.of(Role.CHARGER, Role.INLET));

    private StoppedOrders() {}

    static Condition of(Choices choices, Finding finding) {
        Set<OptionName> deciding = Mentions.of(choices.family());
        Set<Role> roles = LOOKS_AT.get(finding.kind());
        List<Choice> same = Chooser.list(choices).stream()
                .filter(choice -> roles == null
                        ? deciding.contains(choice.option())
                        : roles.stream().anyMatch(role -> inRole(choices.family(), choice, role)))
                .toList();
        return All.of(Wanted.all(same));
    }

    private static boolean inRole(Family family, Choice choice, Role role) {
        return family.inRole(role)
                .map(Option::name)
                .filter(choice.option()::equals)
                .isPresent();
    }
}
