package boltlore.oracle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Chance from one seed: the same seed throws the same. */
final class Dice {

    private final Random random;

    Dice(long seed) {
        this.random = new Random(seed);
    }

    /** From 0 up to but not including the bound. */
    int below(int bound) {
        return random.nextInt(bound);
    }

    int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    boolean once(int inSoMany) {
        return random.nextInt(inSoMany) == 0;
    }

    <T> T oneOf(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    String oneOf(String... all) {
        return all[random.nextInt(all.length)];
    }

    <T> List<T> some(List<T> all) {
        List<T> some = shuffled(all);
        return some.subList(0, between(1, some.size()));
    }

    <T> List<T> shuffled(List<T> all) {
        List<T> shuffled = new ArrayList<>(all);
        Collections.shuffle(shuffled, random);
        return shuffled;
    }

    String quantity() {
        return oneOf("1", "1", "2", "3", "0.5", "1.25");
    }
}
