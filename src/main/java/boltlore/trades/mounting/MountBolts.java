package boltlore.trades.mounting;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.Line;
import boltlore.catalogue.Mounting.Bolts;
import boltlore.catalogue.Mounting.Mount;
import boltlore.catalogue.Need;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.logic.Term;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.proof.KitView;
import boltlore.trades.mounting.MountFigures.Brought;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The bolts that any order's kit has at the positions that a mount names, as conditions over options: the same that a bill
 * lists there. Bolts of a joint that several positions share lie where it is first asked for, which these conditions do not
 * say.
 */
final class MountBolts {

    /** What the mount asks of its bolts. */
    private record Wanted(BigDecimal newton, BigDecimal count) {}

    private record Some(Brought bolts, Condition when) {}

    private final KitView kit;
    private final Mount mount;
    private final List<Some> all = new ArrayList<>();
    private boolean shared;

    MountBolts(KitView kit, Mount mount, Bolts bolts) {
        this.kit = kit;
        this.mount = mount;
        lines(bolts).forEach(this::line);
    }

    private Stream<Line> lines(Bolts bolts) {
        return kit.family().positions().stream()
                .filter(position -> bolts.at().contains(position.name()))
                .flatMap(position -> position.lines().stream());
    }

    private void line(Line line) {
        Condition in = kit.kit().in(line.name());
        part(line.part(), line.quantity(), in);
        line.needs().forEach(need -> need(need, line.quantity(), in));
    }

    /** With what lies in it and what each of that needs. */
    private void part(PartNumber number, BigDecimal quantity, Condition when) {
        Fixing fixing = kit.catalogue().part(number).fixing();
        if (fixing != null && fixing.isBolt()) {
            all.add(new Some(new Brought(fixing, quantity), when));
        }
        for (Contained child : kit.catalogue().part(number).contains()) {
            part(child.part(), quantity.multiply(child.quantity()), when);
        }
        kit.parts().needsOf(number).forEach(need -> need(need, quantity, when));
    }

    private void need(Need need, BigDecimal askers, Condition when) {
        if (need.ask() instanceof Need.Each each) {
            part(
                    need.part(),
                    askers.multiply(each.quantity()),
                    All.of(when, kit.kit().unfolded(need.when())));
        } else {
            shared = true;
        }
    }

    /** Whether part of them lies where a joint is first asked for, so that only a kit tells where. */
    boolean shared() {
        return shared;
    }

    /** When the mount carries something. */
    Condition there() {
        return All.of(
                kit.kit().unfolded(mount.when()),
                Any.of(kit.family().positions().stream()
                        .filter(position -> hangs(position.name()))
                        .map(position -> kit.kit().filled(position.name()))
                        .toList()));
    }

    private boolean hangs(PositionName position) {
        PositionName under = kit.kit().position(position).under();
        return mount.carries().contains(position) || (under != null && hangs(under));
    }

    /** When the mount carries something, and its bolts bear less than it is judged with. */
    Optional<Condition> weaker() {
        Wanted least = wanted(-1);
        return kit.sums().atLeast(newtons(), least.newton()).map(enough -> All.of(there(), Any.but(enough)));
    }

    /** When it carries something, and its bolts bear enough, but are not as many or as strong as it is judged with. */
    Optional<Condition> others() {
        Wanted most = wanted(1);
        List<Term> counted = all.stream()
                .map(some -> new Term(some.bolts().quantity(), some.when()))
                .toList();
        return kit.sums()
                .differ(counted, List.of(new Term(most.count(), Condition.ALWAYS)))
                .flatMap(differ -> kit.sums()
                        .atLeast(newtons(), most.newton())
                        .flatMap(stronger ->
                                weaker().map(weaker -> All.of(there(), Any.but(weaker), Any.of(differ, stronger)))));
    }

    private Wanted wanted(int towards) {
        Bolts declared = MountFigures.declared(mount);
        BigDecimal alike = BigDecimal.valueOf(mount.alike());
        double newton = MountLoad.bears(declared) * (1 + towards * MountFigures.TOLERANCE);
        return new Wanted(
                BigDecimal.valueOf(newton).multiply(alike),
                BigDecimal.valueOf(declared.count()).multiply(alike));
    }

    private List<Term> newtons() {
        return all.stream()
                .map(some -> new Term(BigDecimal.valueOf(MountFigures.bears(some.bolts())), some.when()))
                .toList();
    }

    /** Of a kit with all options chosen. */
    List<Brought> settled() {
        return all.stream()
                .filter(some -> some.when().isAlways())
                .map(Some::bolts)
                .toList();
    }

    List<LineName> lineNames() {
        return lines(MountFigures.declared(mount)).map(Line::name).toList();
    }
}
