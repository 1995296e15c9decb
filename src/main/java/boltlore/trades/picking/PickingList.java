package boltlore.trades.picking;

import boltlore.bill.Bill;
import boltlore.catalogue.Part;
import boltlore.explanation.FindingWords;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.measure.Digits;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.KitInWork;
import boltlore.walking.RouteRule;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * All that stores need to hand out one kit.
 *
 * @param walk from bins, in walking order
 * @param fromCoating coated for this kit, so fetched from coating; by finish, then in walking order
 * @param onHold not to be picked until the order decides on its unused brackets
 * @param extras outside the universal kit, in the order's own order
 * @param bags a page for each fit stage that gets anything, in fitting order
 * @param cautions codes of all cautions for the head of the list, sorted
 */
public record PickingList(
        List<PickRow> walk,
        List<CoatedRow> fromCoating,
        List<OnHold> onHold,
        List<ExtraRow> extras,
        List<BagPage> bags,
        List<String> cautions) {

    public static PickingList of(FamilyPlan plan, Bill bill) {
        return new PickingMaker(plan, bill).list();
    }

    /** What comes from bins in the order in which that rule comes by them. */
    PickingList walkedBy(RouteRule rule, Walk stores) {
        List<String> bins = walk.stream().map(row -> row.part().bin()).toList();
        List<PickRow> rows = walk.stream()
                .sorted(Comparator.comparing(row -> row.part().bin(), stores.order(rule, bins)))
                .toList();
        return new PickingList(rows, fromCoating, onHold, extras, bags, cautions);
    }

    /** How many spares of each part its bags hold. */
    public Map<PartNumber, BigDecimal> spares() {
        Map<PartNumber, BigDecimal> spares = new TreeMap<>();
        bags.stream()
                .flatMap(page -> page.rows().stream())
                .filter(row -> row.spares().signum() > 0)
                .forEach(row -> spares.merge(row.part().number(), row.spares(), BigDecimal::add));
        return spares;
    }

    /** Parts with a number to write down, from bins, from coating and of extras that are ours to hand out. */
    List<Numbered> numbered() {
        Stream<Numbered> kit = Stream.concat(walk.stream(), fromCoating.stream().map(CoatedRow::row))
                .map(row -> new Numbered(row.part(), row.quantity()));
        Stream<Numbered> outside = extras.stream()
                .filter(row -> row.part() != null && !row.extra().suppliedByCustomer())
                .map(row -> new Numbered(
                        Objects.requireNonNull(row.part()), row.extra().quantity()));
        return Stream.concat(kit, outside).filter(each -> each.numbers() > 0).toList();
    }

    /** Whether some part may be picked in another's place. */
    boolean hasAlternates() {
        return Stream.concat(walk.stream(), fromCoating.stream().map(CoatedRow::row))
                .anyMatch(row -> !row.part().upkeep().alternates().isEmpty());
    }

    /** What somebody must decide or find out before the kit can be handed out whole. */
    Findings findings(KitInWork kit) {
        return Stream.of(onHold(new FindingWords(kit.family())), offTheWalk(Walk.of(kit.catalogue())), withoutBin())
                .flatMap(Function.identity())
                .collect(Findings.collected());
    }

    /** A finding for each bracket that nobody has decided about, with all that hangs on it. */
    private Stream<Finding> onHold(FindingWords words) {
        SortedMap<LineName, List<OnHold>> byBracket = new TreeMap<>();
        onHold.forEach(held -> held.brackets()
                .forEach(bracket -> byBracket
                        .computeIfAbsent(bracket, any -> new ArrayList<>())
                        .add(held)));
        return byBracket.entrySet().stream()
                .map(each -> Finding.of(
                        PickingFinding.LINES_ON_HOLD,
                        each.getKey().text(),
                        "bracket",
                        words.line(each.getKey().text()),
                        "lines",
                        each.getValue().size(),
                        "parts",
                        each.getValue().stream()
                                .map(held -> Digits.plain(held.quantity()) + " × "
                                        + held.part().number())
                                .toList()));
    }

    /** What has no bin at all is found by the rules of the kit. */
    private Stream<Finding> offTheWalk(Walk order) {
        Stream<Part> picked = Stream.concat(walk.stream(), fromCoating.stream().map(CoatedRow::row))
                .map(PickRow::part);
        return Stream.concat(
                        picked,
                        extras.stream().filter(row -> !row.bin().isEmpty()).map(ExtraRow::part))
                .filter(part -> !part.bin().isEmpty() && !order.passes(part.bin()))
                .distinct()
                .map(part -> Finding.of(
                        PickingFinding.BIN_OFF_THE_WALK,
                        part.number().text(),
                        "part",
                        part.number().text(),
                        "bin",
                        part.bin()));
    }

    private Stream<Finding> withoutBin() {
        return extras.stream()
                .filter(row -> !row.extra().suppliedByCustomer() && row.bin().isEmpty())
                .map(row -> Finding.of(PickingFinding.EXTRA_WITHOUT_BIN, row.name(), "extra", row.name()));
    }
}
