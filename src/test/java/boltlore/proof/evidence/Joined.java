package boltlore.proof.evidence;

import boltlore.proof.FamilyProof;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The files of a family's evidence, read back and joined by other code than that which wrote them. */
final class Joined {

    /** A row of the index. */
    record Row(String number, String answer, String models, String statement) {}

    private final Map<String, String> files = new LinkedHashMap<>();

    Joined(FamilyProof proof) {
        Evidence.write(proof, files::put);
    }

    Map<String, String> files() {
        return files;
    }

    List<Row> rows() {
        return file("statements.tsv")
                .lines()
                .skip(1)
                .map(line -> line.split("\t", -1))
                .map(cells -> new Row(cells[0], cells[1], cells[2], cells[3]))
                .toList();
    }

    String dimacs(Row row) {
        return dimacs(clauses(file("statements/" + row.number() + ".add")));
    }

    /** The base with these clauses. */
    String dimacs(List<String> more) {
        List<String> all = new ArrayList<>(clauses(file("base.cnf")));
        all.addAll(more);
        int top = all.stream()
                .flatMap(clause -> List.of(clause.split(" ", -1)).stream())
                .mapToInt(literal -> Math.abs(Integer.parseInt(literal)))
                .max()
                .orElse(0);
        return "p cnf " + top + " " + all.size() + "\n" + String.join("\n", all) + "\n";
    }

    static List<String> clauses(String text) {
        return text.lines()
                .filter(line -> !line.startsWith("c") && !line.startsWith("p"))
                .toList();
    }

    /** The variable that the base's comments give this name. */
    int variable(String name) {
        return file("base.cnf")
                .lines()
                .filter(line -> line.startsWith("c ") && line.endsWith(" " + name))
                .map(line -> line.split(" ", -1))
                .mapToInt(words -> words[2].equals("not") ? -Integer.parseInt(words[1]) : Integer.parseInt(words[1]))
                .findFirst()
                .orElseThrow();
    }

    private String file(String name) {
        String text = files.get(name);
        if (text == null) {
            throw new AssertionError("No file " + name);
        }
        return text;
    }
}
