package boltlore.proof;

import org.junit.jupiter.api.Test;

class DemoFamilyTest {
    @Test
    void look() {
        for (int i = 0; i < 4; i++) {
            long t = System.nanoTime();
            FamilyProof proof = DemoFamily.prove(DemoFamily.catalogue(), DemoFamily.VAN);
            System.out.println("ms " + (System.nanoTime() - t) / 1_000_000 + " " + proof.orders() + " "
                    + proof.answers().size());
            if (i == 0)
                proof.answers().stream()
                        .filter(a -> !(a instanceof Answer.Proved))
                        .filter(a -> a.statement().kind().severity() != boltlore.resolution.Severity.INFORMS)
                        .forEach(a -> System.out.println(a.statement().title() + " "
                                + a.statement().kind().severity()
                                + (a instanceof Answer.Defect d
                                        ? " " + d.whenever() + d.touched()
                                                + d.limits().stream()
                                                        .map(l -> l.name())
                                                        .toList()
                                        : a)));
        }
    }
}
