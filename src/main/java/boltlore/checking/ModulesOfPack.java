package boltlore.checking;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Pack;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Whether the lines that bring a pack's modules bring as many as it has, in every order that it belongs to. */
record ModulesOfPack(Family family, Together together) {

    /** More lines than that are more cases than can be tried. */
    private static final int MOST_LINES = 12;

    Stream<Remark> of(Pack pack) {
        List<Line> lines =
                family.lines().filter(line -> line.part().equals(pack.module())).toList();
        return lines.isEmpty() || lines.size() > MOST_LINES
                ? Stream.empty()
                : cases(lines.size()).flatMap(called -> of(pack, lines, called));
    }

    /** Every way in which each line may be called or not, as the bits of a number. */
    private static Stream<Integer> cases(int lines) {
        return Stream.iterate(0, each -> each + 1).limit(1L << lines);
    }

    private Stream<Remark> of(Pack pack, List<Line> lines, int called) {
        BigDecimal modules = BigDecimal.ZERO;
        List<Condition> held = new ArrayList<>();
        for (int at = 0; at < lines.size(); at++) {
            boolean holds = (called >> at & 1) == 1;
            modules = holds ? modules.add(lines.get(at).quantity()) : modules;
            held.add(
                    holds
                            ? lines.get(at).when()
                            : new Condition.Not(lines.get(at).when()));
        }
        return modules.compareTo(BigDecimal.valueOf(pack.modules())) == 0
                        || !together.canHold(pack.when(), new Condition.All(held))
                ? Stream.empty()
                : Stream.of(remark(pack, modules));
    }

    private Remark remark(Pack pack, BigDecimal modules) {
        return new Remark(
                "electrics " + family.name() + "/" + pack.name(),
                Check.MODULES,
                Digits.plain(modules) + " of " + pack.module() + " in some kit",
                pack.modules() + ": " + pack.inSeries() + " in series, " + pack.inParallel() + " side by side",
                "Check the pack, or the lines of its modules");
    }
}
