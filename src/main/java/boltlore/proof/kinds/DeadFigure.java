package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Driving;
import boltlore.catalogue.Electrics;
import boltlore.findings.Severity;
import boltlore.logic.Any;
import boltlore.proof.FamilyView;
import boltlore.proof.Question;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A figure of driving.json or electrics.json whose condition no valid order fulfils: nobody ever reckons with it. */
final class DeadFigure implements StatementKind {

    /** What stands in a file with the orders that it belongs to. */
    private record Stated(String subject, Condition when) {}

    @Override
    public String name() {
        return "figure in no order";
    }

    @Override
    public Severity severity() {
        return Severity.CHECK;
    }

    @Override
    public String holds() {
        return "Every figure of driving and electrics is of some valid order.";
    }

    @Override
    public String mend() {
        return "Correct its 'when', narrow one of these limits, or take it out.";
    }

    @Override
    public List<Statement> statements(FamilyView family) {
        return Stream.concat(
                        ofDriving(family.family().driving()),
                        ofElectrics(family.family().electrics()))
                .map(stated -> new Statement(
                        this,
                        stated.subject(),
                        "",
                        "No valid order has what " + stated.subject() + " is for.",
                        Question.someOrder(family.kept().kit().unfolded(stated.when())),
                        Any.NEVER,
                        List.of(),
                        List.of()))
                .toList();
    }

    private static Stream<Stated> ofDriving(Driving driving) {
        return Stream.of(
                        numbered("driving.json, road load", driving.roadLoads(), Driving.RoadLoad::when),
                        numbered("driving.json, promise", driving.promises(), Driving.Promise::when),
                        driving.auxiliaries().stream()
                                .map(each -> new Stated("driving.json, auxiliary '" + each.says() + "'", each.when())),
                        driving.cooling().circuits().stream()
                                .map(each -> new Stated("driving.json, circuit " + each.name(), each.when())),
                        driving.mounting().mounts().stream()
                                .map(each -> new Stated("driving.json, mount " + each.name(), each.when())))
                .flatMap(stated -> stated);
    }

    private static Stream<Stated> ofElectrics(Electrics electrics) {
        return Stream.of(
                        electrics.packs().stream()
                                .map(each -> new Stated("electrics.json, pack " + each.name(), each.when())),
                        electrics.branches().stream()
                                .map(each -> new Stated("electrics.json, branch " + each.name(), each.when())),
                        electrics.circuits().stream()
                                .map(each -> new Stated("electrics.json, circuit " + each.name(), each.when())))
                .flatMap(stated -> stated);
    }

    private static <T> Stream<Stated> numbered(String what, List<T> all, Function<T, Condition> when) {
        return IntStream.range(0, all.size())
                .mapToObj(at -> new Stated(what + " " + (at + 1), when.apply(all.get(at))));
    }
}
