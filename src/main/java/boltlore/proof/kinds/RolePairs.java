package boltlore.proof.kinds;

import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.logic.All;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiPredicate;

/** Values of two options, by their roles, that do not go together. */
final class RolePairs {

    private RolePairs() {}

    /**
     * A finding for each two values that clash: the first is its subject, the second its detail.
     *
     * @param says the finding as a sentence, with %1$s and %2$s for the two values
     */
    static List<PossibleFinding> clashing(
            KitView kit, Role first, Role second, BiPredicate<OptionValue, OptionValue> clash, String says) {
        Optional<Option> one = kit.family().inRole(first);
        Optional<Option> other = kit.family().inRole(second);
        if (one.isEmpty() || other.isEmpty()) {
            return List.of();
        }
        List<PossibleFinding> all = new ArrayList<>();
        for (OptionValue left : one.get().values()) {
            for (OptionValue right : other.get().values()) {
                if (clash.test(left, right)) {
                    all.add(PossibleFinding.of(
                            left.value(),
                            right.value(),
                            All.of(
                                    Value.is(one.get().name(), left.value()),
                                    Value.is(other.get().name(), right.value())),
                            List.of(),
                            String.format(Locale.ROOT, says, left.value(), right.value())));
                }
            }
        }
        return all;
    }
}
