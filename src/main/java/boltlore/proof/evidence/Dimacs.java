package boltlore.proof.evidence;

import java.util.List;

/** Clauses as text in the DIMACS format: comments begin with c, clauses end with 0. */
final class Dimacs {

    private Dimacs() {}

    static void comment(StringBuilder out, String text) {
        out.append("c ").append(text.replace('\n', ' ')).append('\n');
    }

    static void header(StringBuilder out, int variables, int clauses) {
        out.append("p cnf ").append(variables).append(' ').append(clauses).append('\n');
    }

    static void clauses(StringBuilder out, List<int[]> clauses) {
        for (int[] clause : clauses) {
            for (int literal : clause) {
                out.append(literal).append(' ');
            }
            out.append("0\n");
        }
    }
}
