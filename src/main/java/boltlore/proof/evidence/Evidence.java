package boltlore.proof.evidence;

import boltlore.proof.Answer;
import boltlore.proof.FamilyProof;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.BiConsumer;

/** Everything that someone needs to check a family's proof again: clauses, the answers to expect, a script. */
public final class Evidence {

    private static final String SCRIPT = "check.sh";

    private final FamilyProof proof;
    private final BaseClauses base;

    private Evidence(FamilyProof proof) {
        this.proof = proof;
        this.base = new BaseClauses(proof.family());
    }

    /**
     * Hands over each file by its name and text.
     *
     * @return how many statements there are files for
     */
    public static int write(FamilyProof proof, BiConsumer<String, String> files) {
        return new Evidence(proof).write(files);
    }

    private int write(BiConsumer<String, String> files) {
        files.accept("base.cnf", baseText());
        StringBuilder index = new StringBuilder("number\tanswer\tmodels\tstatement\tmeaning\n");
        int number = 0;
        for (Answer answer : proof.answers()) {
            if (StatementClauses.isAnswered(answer)) {
                number++;
                StatementClauses statement = StatementClauses.of(base, answer);
                String name = String.format(Locale.ROOT, "%05d", number);
                files.accept("statements/" + name + ".add", statement.text());
                index.append(name).append('\t').append(statement.indexed()).append('\n');
            }
        }
        files.accept("statements.tsv", index.toString());
        files.accept(SCRIPT, script());
        return number;
    }

    private String baseText() {
        StringBuilder out = new StringBuilder();
        Dimacs.comment(out, "Family " + proof.family().name() + ": what all statements have in common.");
        Dimacs.comment(out, "Join it with a file of the folder 'statements': ./check.sh does it for all of them.");
        Dimacs.comment(out, "Variables, by number; the rest stand for parts of conditions:");
        base.legend().forEach(line -> Dimacs.comment(out, line));
        Dimacs.header(out, base.clauses().variables(), base.clauses().all().size());
        Dimacs.clauses(out, base.clauses().all());
        return out.toString();
    }

    private static String script() {
        try (InputStream in = Evidence.class.getResourceAsStream(SCRIPT)) {
            if (in == null) {
                throw new IllegalStateException("The script is not beside the class: " + SCRIPT);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
