package boltlore.oracle;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Condition;
import boltlore.catalogue.EffectivityScale;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Need;
import boltlore.catalogue.Option;
import boltlore.catalogue.Pair;
import boltlore.catalogue.Role;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.trial.Say;
import boltlore.trial.Trial;
import boltlore.trial.TrialWorkshop;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** A small catalogue by chance that uses every feature of the language; the same seed draws the same. */
public final class RandomCatalogue {

    private static final List<Role> ROLES = List.of(
            Role.MARKET, Role.INLET, Role.DC_INLET, Role.CHARGER, Role.SUPPLY, Role.EXPORT, Role.LANGUAGE, Role.COLOUR);

    private final Dice dice;
    private final Trial trial = new Trial();
    private final int parts;
    private final int positions;

    private RandomCatalogue(long seed) {
        this.dice = new Dice(seed);
        this.parts = dice.between(6, 20);
        this.positions = dice.between(2, 8);
    }

    public static Catalogue draw(long seed) {
        return new RandomCatalogue(seed).draw();
    }

    private Catalogue draw() {
        options();
        List<Option> options = trial.catalogue().family(Trial.FAMILY).options();
        RandomConditions conditions = new RandomConditions(dice, options, positions);
        RandomParts randomParts = new RandomParts(dice, parts);
        for (int number = 0; number < parts; number++) {
            trial.part(randomParts.draw(number));
        }
        limits(conditions);
        pairs(conditions);
        RandomPositions places = new RandomPositions(
                dice,
                positions,
                conditions,
                randomParts,
                trial.catalogue().family(Trial.FAMILY).scales());
        places.draw().forEach(trial::position);
        companions(conditions, randomParts);
        trial.lead(RandomParts.name(0), 1, "32");
        String other = randomParts.any();
        if (!other.equals(RandomParts.name(0))) {
            trial.lead(other, dice.oneOf(List.of(1, 3)), dice.oneOf("16", "32", "48"));
        }
        return trial.catalogue();
    }

    /** Up to three days at which something begins or ends, and two chassis numbers; in half of the catalogues neither. */
    private void scales() {
        if (dice.once(3)) {
            trial.several("extras", "rack", "bar");
        }
        if (dice.once(2)) {
            SortedSet<Integer> days = new TreeSet<>();
            for (int more = dice.between(1, 3); more > 0; more--) {
                days.add(20_000 + dice.below(700));
            }
            trial.scale(new EffectivityScale(EffectivityScale.By.PLACED, days));
            if (dice.once(3)) {
                trial.scale(new EffectivityScale(
                        EffectivityScale.By.CHASSIS, new TreeSet<>(List.of(1_000, 1_000 + dice.between(1, 500)))));
            }
        }
    }

    /** Two options without a role and up to three in roles: 48 choices at the most, before the questions of {@link #scales}. */
    private void options() {
        trial.option("side", "left", "right");
        trial.option("size", "small", "medium", "large");
        RandomOptions values = new RandomOptions(dice);
        for (Role role : dice.shuffled(ROLES).subList(0, dice.between(1, 3))) {
            trial.option(role.written(), role, values.values(role));
        }
        scales();
        boolean coloured =
                trial.catalogue().family(Trial.FAMILY).inRole(Role.COLOUR).isPresent();
        trial.role(
                "frame",
                coloured
                        ? new FinishRule.DecidedBy(new OptionName(Role.COLOUR.written()))
                        : new FinishRule.Fixed("own"));
        trial.role("bracket", new FinishRule.Fixed("outside"));
        trial.finish(TrialWorkshop.ownFinish("own")).finish(TrialWorkshop.outsideFinish("outside"));
        trial.caution("oven", "coating")
                .caution("high-voltage", "bill", "picking")
                .caution("lift-two", "picking");
    }

    private void limits(RandomConditions conditions) {
        for (int number = dice.below(3); number > 0; number--) {
            Condition then = dice.once(2) ? null : conditions.overOptions();
            Condition when = Say.all(conditions.overOptions(), Say.is("size", dice.oneOf("small", "large")));
            trial.limit(new Limit("limit-" + number, "It cannot be built.", null, when, then));
        }
    }

    private void pairs(RandomConditions conditions) {
        trial.pair(new Pair.One("pedals", new OptionName("side"), "left", "right", conditions.anywhere()));
        trial.pair(new Pair.Both("brackets"));
    }

    private void companions(RandomConditions conditions, RandomParts randomParts) {
        for (int number = 0; number < parts - 1; number++) {
            if (dice.once(3)) {
                PartNumber asker = new PartNumber(RandomParts.name(number));
                List<Need> needs = dice.once(3) ? List.of() : List.of(conditions.need(randomParts.after(number)));
                List<Expectation> expects =
                        dice.once(2) ? List.of() : List.of(conditions.expectation(randomParts.any()));
                trial.companion(new Companion(asker, needs, expects));
            }
        }
    }
}
