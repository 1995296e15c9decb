package boltlore.logic;

import java.util.List;
import java.util.stream.Stream;

/**
 * Counts how many of some literals hold, in unary: the output at place k holds when more than k of them do (totalizer;
 * Bailleux and Boufkhad, Efficient CNF encoding of Boolean cardinality constraints, CP 2003; from memory). Only this
 * direction is said, which is what a lower bound needs.
 */
final class Totalizer {

    private final SolverInternals.Search search;
    private final Deadline deadline;
    private final List<Integer> outputs;

    Totalizer(List<Integer> inputs, SolverInternals.Search search, Deadline deadline) {
        this.search = search;
        this.deadline = deadline;
        this.outputs = count(inputs);
    }

    int size() {
        return outputs.size();
    }

    /** Holds when more than that many inputs hold. */
    int moreThan(int many) {
        return outputs.get(many);
    }

    private List<Integer> count(List<Integer> inputs) {
        if (inputs.size() == 1) {
            return inputs;
        }
        int middle = inputs.size() / 2;
        return merged(count(inputs.subList(0, middle)), count(inputs.subList(middle, inputs.size())));
    }

    private List<Integer> merged(List<Integer> left, List<Integer> right) {
        List<Integer> sums =
                Stream.generate(search::fresh).limit(left.size() + right.size()).toList();
        for (int i = 0; i <= left.size(); i++) {
            deadline.check();
            for (int j = i == 0 ? 1 : 0; j <= right.size(); j++) {
                int sum = sums.get(i + j - 1);
                if (i == 0) {
                    search.clause(SolverInternals.not(right.get(j - 1)), sum);
                } else if (j == 0) {
                    search.clause(SolverInternals.not(left.get(i - 1)), sum);
                } else {
                    search.clause(SolverInternals.not(left.get(i - 1)), SolverInternals.not(right.get(j - 1)), sum);
                }
            }
        }
        return sums;
    }
}
