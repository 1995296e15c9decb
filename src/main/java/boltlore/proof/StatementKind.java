package boltlore.proof;

import boltlore.catalogue.Catalogue;
import boltlore.choices.Choices;
import boltlore.findings.Severity;
import java.util.List;

/** A kind of statement, and how to state it of one family. */
public interface StatementKind {

    /** What is wrong where a statement of this kind is refuted, as in findings: 'hole'. */
    String name();

    Severity severity();

    /** The sentence that is true when every statement of this kind is proved. */
    String holds();

    /** How to mend what it finds. */
    String mend();

    /** Whether nothing more can be asked of a family once such a statement is refuted. */
    default boolean endsAll() {
        return false;
    }

    /** Kinds whose refuted statements about the same subject already say all that one of this kind could. */
    default List<StatementKind> saidAlreadyBy() {
        return List.of();
    }

    /** Whether what it finds shows in orders that leave out all brackets of no use. */
    default boolean leavesOutUnused() {
        return false;
    }

    List<Statement> statements(FamilyView family);

    /** The refuted statement's sentence about an order that shows it. */
    default String refutedBy(Statement statement, Catalogue catalogue, Choices order) {
        return statement.refuted();
    }
}
