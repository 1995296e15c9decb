package boltlore.proof.evidence;

import java.util.ArrayList;
import java.util.List;

/** Clauses under construction; variables are numbered from 1, a negative number is a variable's negation. */
final class Clauses {

    private final List<int[]> clauses = new ArrayList<>();
    private int variables;

    /** @param variables numbers that are taken already */
    Clauses(int variables) {
        this.variables = variables;
    }

    int fresh() {
        return ++variables;
    }

    int variables() {
        return variables;
    }

    List<int[]> all() {
        return clauses;
    }

    void add(int... literals) {
        clauses.add(literals);
    }

    /** A new variable that holds exactly when all of these do. */
    int and(List<Integer> literals) {
        return -or(literals.stream().map(literal -> -literal).toList());
    }

    /** A new variable that holds exactly when one of these does. */
    int or(List<Integer> literals) {
        int one = fresh();
        int[] some = new int[literals.size() + 1];
        some[literals.size()] = -one;
        for (int i = 0; i < literals.size(); i++) {
            some[i] = literals.get(i);
            add(one, -literals.get(i));
        }
        add(some);
        return one;
    }

    /**
     * Exactly one of these holds. Many are counted along a chain of new variables, each of which holds exactly when one
     * of the literals up to its place does, so that models do not multiply.
     */
    void exactlyOne(List<Integer> literals) {
        add(literals.stream().mapToInt(Integer::intValue).toArray());
        if (literals.size() <= 6) {
            for (int i = 0; i < literals.size(); i++) {
                for (int j = i + 1; j < literals.size(); j++) {
                    add(-literals.get(i), -literals.get(j));
                }
            }
            return;
        }
        int sofar = literals.get(0);
        for (int i = 1; i < literals.size(); i++) {
            add(-sofar, -literals.get(i));
            sofar = or(List.of(sofar, literals.get(i)));
        }
    }
}
