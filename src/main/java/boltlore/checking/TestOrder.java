package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Circuit;
import boltlore.catalogue.Demand;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.LimitRule;
import boltlore.catalogue.TestGroup;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A finished kit is tested dead first, then as its link is charged for the first time, then live. */
final class TestOrder {

    private final String family;
    private final List<Remark> remarks = new ArrayList<>();

    private TestOrder(String family) {
        this.family = family;
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream()
                .filter(family -> !family.electrics().equals(Electrics.NONE))
                .flatMap(family -> of(family.name(), family.endOfLine().groups()));
    }

    static Stream<Remark> of(String family, List<TestGroup> groups) {
        return new TestOrder(family).check(groups);
    }

    private Stream<Remark> check(List<TestGroup> groups) {
        TestGroup before = null;
        boolean insulated = false;
        for (TestGroup group : groups) {
            Circuit circuit = group.circuit();
            if (circuit == null) {
                remark(group, Check.TEST_CIRCUIT, "no 'circuit'", "whether its tests are made dead or live");
                continue;
            }
            Circuit latest = before == null ? null : before.circuit();
            if (latest != null && circuit.compareTo(latest) < 0) {
                out(group, circuit, before);
            } else {
                before = group;
            }
            insulated |= circuit == Circuit.DEAD && insulation(group);
            insulated |= circuit.compareTo(Circuit.PRECHARGE) >= 0 && closes(group, circuit, insulated);
        }
        return remarks.stream();
    }

    private void out(TestGroup group, Circuit circuit, @Nullable TestGroup before) {
        String after = before == null ? "" : before.name() + "', made " + said(before.circuit());
        remark(
                group,
                Check.TEST_ORDER,
                "made " + said(circuit) + ", behind '" + after,
                "dead tests first, then with contactors open, then the precharge, then live");
    }

    /** Told once: whoever closes contactors on a circuit that leaks may be hurt by its case. */
    private boolean closes(TestGroup group, Circuit circuit, boolean insulated) {
        if (!insulated) {
            remark(
                    group,
                    Check.TEST_ORDER,
                    "made " + said(circuit) + " with no insulation test of the dead circuit before it",
                    "a test reckoned by '" + LimitRule.DEAD_ISOLATION.written() + "' in a group that is 'dead'");
        }
        return true;
    }

    private static boolean insulation(TestGroup group) {
        return group.tests().stream()
                .anyMatch(test -> test.demand() instanceof Demand.Computed reckoned
                        && reckoned.rule() == LimitRule.DEAD_ISOLATION);
    }

    private static String said(@Nullable Circuit circuit) {
        return circuit == null ? "" : "'" + circuit.written() + "'";
    }

    private void remark(TestGroup group, Check check, String found, String expected) {
        remarks.add(new Remark(
                "test group " + family + "/" + group.name(),
                check,
                found,
                expected,
                "Put the groups of tests.json into that order, and name the circuit of each"));
    }
}
