package boltlore.proof.sample;

import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/**
 * The combinations of values of two or three different options, numbered without gaps. A whole order is the place of
 * each option's value; a combination is the same with -1 for the options it leaves open.
 */
final class Combinations {

    /** The combinations of the same options, numbered from the first. */
    private static final class Block {

        private final int[] options;
        private final int first;

        Block(int[] options, int first) {
            this.options = options;
            this.first = first;
        }
    }

    private final int[] sizes;
    private final List<Block> blocks = new ArrayList<>();
    private final long count;

    /** @throws IllegalArgumentException where there are more combinations than can be kept in mind */
    Combinations(Family family, int ways, long most) {
        sizes = family.options().stream()
                .map(Option::values)
                .mapToInt(List::size)
                .toArray();
        long next = 0;
        for (int[] options : choose(sizes.length, ways)) {
            blocks.add(new Block(options, (int) Math.min(next, Integer.MAX_VALUE)));
            long many = 1;
            for (int option : options) {
                many *= sizes[option];
            }
            next += many;
        }
        count = next;
        if (count > most) {
            throw new IllegalArgumentException("There are " + count + " combinations");
        }
    }

    private static List<int[]> choose(int options, int ways) {
        List<int[]> all = new ArrayList<>();
        for (int i = 0; i < options; i++) {
            for (int j = i + 1; j < options; j++) {
                if (ways == 2) {
                    all.add(new int[] {i, j});
                }
                for (int k = j + 1; ways == 3 && k < options; k++) {
                    all.add(new int[] {i, j, k});
                }
            }
        }
        return all;
    }

    int count() {
        return (int) count;
    }

    /** The numbers of all combinations that the order has; those with an open option are passed over. */
    void of(int[] order, Consumer<Integer> combination) {
        for (Block block : blocks) {
            int number = number(block, order);
            if (number >= 0) {
                combination.accept(number);
            }
        }
    }

    /** The numbers of those combinations of the order that have this option. */
    void with(int option, int[] order, Consumer<Integer> combination) {
        for (Block block : blocks) {
            for (int each : block.options) {
                if (each == option) {
                    int number = number(block, order);
                    if (number >= 0) {
                        combination.accept(number);
                    }
                }
            }
        }
    }

    private int number(Block block, int[] order) {
        int number = 0;
        for (int option : block.options) {
            if (order[option] < 0) {
                return -1;
            }
            number = number * sizes[option] + order[option];
        }
        return block.first + number;
    }

    /** The combination of that number. */
    int[] at(int number) {
        int place = 0;
        while (place + 1 < blocks.size() && blocks.get(place + 1).first <= number) {
            place++;
        }
        Block block = blocks.get(place);
        int[] combination = new int[sizes.length];
        Arrays.fill(combination, -1);
        int rest = number - block.first;
        for (int i = block.options.length - 1; i >= 0; i--) {
            int option = block.options[i];
            combination[option] = rest % sizes[option];
            rest /= sizes[option];
        }
        return combination;
    }
}
