package boltlore.proof;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import boltlore.findings.Severity;
import boltlore.resolution.FindingKind;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.Predefined;
import org.junit.jupiter.api.Test;

/** Rules and formulas say the same by different code only as long as neither calls the other. */
class ProofRoomTest {

    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("boltlore");

    @Test
    void proofs_share_names_with_the_rules_and_nothing_else() {
        noClasses()
                .that()
                .resideInAnyPackage("boltlore.proof..", "boltlore.logic..")
                .should()
                .dependOnClassesThat(JavaClass.Predicates.resideInAPackage("boltlore.resolution..")
                        .and(com.tngtech.archunit.base.DescribedPredicate.not(
                                JavaClass.Predicates.belongToAnyOf(FindingKind.class, Severity.class))))
                .check(CODE);
    }

    @Test
    void rules_know_no_proofs() {
        noClasses()
                .that()
                .resideInAPackage("boltlore.resolution..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("boltlore.proof..", "boltlore.logic..")
                .check(CODE);
    }
}
