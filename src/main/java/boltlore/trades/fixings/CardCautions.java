package boltlore.trades.fixings;

import boltlore.bill.Item;
import boltlore.catalogue.Caution;
import boltlore.catalogue.Position;
import boltlore.report.CautionNotes;
import boltlore.report.PageBuilder;
import boltlore.report.Phrases;
import boltlore.trades.KitInWork;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** What can hurt whoever works by a fitter's card. */
record CardCautions(KitInWork kit, List<BoltedJoint> joints, Phrases phrases) {

    private static final String LITHIUM = "lithium";
    private static final String EYES = "lifting-eye";

    /**
     * What holds on every card first, then for what is fitted here, once each; then for joints that are signed for.
     * A card that fits battery modules tells how their box is lifted: it is lifted filled, however little one of them weighs.
     */
    void on(PageBuilder page, Map<Position, List<Item>> positions) {
        Set<String> codes = new LinkedHashSet<>(CautionNotes.alwaysOn(kit.workshop(), "fitters-cards"));
        ofParts(positions).forEach(codes::add);
        if (positions.values().stream().flatMap(List::stream).anyMatch(item -> bears(item, LITHIUM))) {
            codes.addAll(CautionNotes.alwaysOn(kit.workshop(), "fitters-battery"));
            if (kit.bill().items().stream().anyMatch(item -> bears(item, EYES))) {
                codes.add(EYES);
            }
        }
        if (joints.stream().anyMatch(joint -> joint.safety() && positions.containsKey(joint.position()))) {
            codes.addAll(CautionNotes.alwaysOn(kit.workshop(), "signed-joints"));
        }
        CautionNotes.add(
                page, codes, kit.workshop(), phrases.say("caution"), kit.order().language());
    }

    private Stream<String> ofParts(Map<Position, List<Item>> positions) {
        Set<String> codes = new LinkedHashSet<>();
        positions.values().stream()
                .flatMap(List::stream)
                .flatMap(Item::all)
                .forEach(item -> codes.addAll(item.part().cautions()));
        return kit.workshop().cautionsOf(codes.stream().sorted().toList()).stream()
                .filter(caution -> caution.sheets().contains("contents")
                        || caution.sheets().contains(FitterCards.FILE))
                .map(Caution::code);
    }

    private static boolean bears(Item item, String caution) {
        return item.all().anyMatch(each -> each.part().cautions().contains(caution));
    }
}
