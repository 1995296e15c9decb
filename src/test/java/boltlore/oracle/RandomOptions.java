package boltlore.oracle;

import boltlore.catalogue.Facts;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.trial.Say;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Values in each role with facts by chance, some of them not known. */
final class RandomOptions {

    private final Dice dice;

    RandomOptions(Dice dice) {
        this.dice = dice;
    }

    List<OptionValue> values(Role role) {
        List<OptionValue> values = new ArrayList<>();
        for (String name : names(role)) {
            values.add(Say.value(name, facts(role)));
        }
        return values;
    }

    private static List<String> names(Role role) {
        return switch (role) {
            case INLET -> List.of("type-1", "type-2");
            case DC_INLET -> List.of("direct-1", "direct-2");
            case LANGUAGE -> List.of("en", "de");
            case COLOUR -> List.of("black", "grey");
            default -> List.of(role.written() + "-a", role.written() + "-b");
        };
    }

    private Facts facts(Role role) {
        return switch (role) {
            case DC_INLET -> dice.once(3) ? Facts.NONE : wired(null, null, null);
            case INLET, SUPPLY -> wired(null, null, null);
            case CHARGER -> wired(null, dice.once(3) ? null : dice.once(2), dice.oneOf("2", "3.68", "7"));
            case EXPORT -> dice.once(2) ? Facts.NONE : wired(dice.oneOf("socket-a", "socket-b"), null, null);
            case MARKET -> market();
            case COLOUR -> colour(dice.oneOf("own", "outside"));
            default -> Facts.NONE;
        };
    }

    private Facts wired(@Nullable String socket, @Nullable Boolean twoWay, @Nullable String exportKw) {
        return new Facts(
                dice.once(4) ? null : dice.oneOf(List.of(1, 3)),
                dice.once(4) ? null : new BigDecimal(dice.oneOf("16", "32", "32.0", "48")),
                new BigDecimal("230"),
                socket,
                List.of(),
                List.of(),
                List.of(),
                twoWay,
                exportKw == null ? null : new BigDecimal(exportKw),
                null,
                null);
    }

    private Facts market() {
        return new Facts(
                null,
                null,
                null,
                null,
                some("socket-a", "socket-b"),
                some("type-1", "type-2", "direct-1"),
                some("en", "de"),
                null,
                null,
                null,
                null);
    }

    private List<String> some(String... all) {
        return dice.once(4) ? List.of() : List.copyOf(dice.some(List.of(all)));
    }

    private static Facts colour(String finish) {
        return new Facts(null, null, null, null, List.of(), List.of(), List.of(), null, null, null, finish);
    }
}
