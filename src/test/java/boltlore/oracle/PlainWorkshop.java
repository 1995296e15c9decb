package boltlore.oracle;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Caution;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Finish;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Reason;
import boltlore.resolution.Way;
import java.util.Locale;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Finishes, masks, bins and cautions of a kit's parts. */
final class PlainWorkshop {

    private final Catalogue catalogue;
    private final PlainKit kit;

    PlainWorkshop(Catalogue catalogue, PlainKit kit) {
        this.catalogue = catalogue;
        this.kit = kit;
    }

    SortedMap<PartNumber, String> finishes() {
        SortedMap<PartNumber, String> finishes = new TreeMap<>();
        for (PartNumber number : kit.quantities().keySet()) {
            String finish = finish(kit.part(number).coat());
            if (finish != null) {
                finishes.put(number, finish);
            }
        }
        return finishes;
    }

    private @Nullable String finish(@Nullable CoatingSpec coat) {
        if (coat == null) {
            return null;
        }
        if (coat.role() == null) {
            return coat.finish();
        }
        FinishRule rule = kit.family.finishes().get(coat.role());
        if (rule instanceof FinishRule.Fixed fixed) {
            return fixed.finish();
        }
        if (rule instanceof FinishRule.DecidedBy decided) {
            String chosen = kit.choice.value(decided.option());
            return kit.family.options().stream()
                    .filter(option -> option.name().equals(decided.option()))
                    .flatMap(option -> option.values().stream())
                    .filter(value -> value.value().equals(chosen))
                    .map(value -> value.facts().finish())
                    .findFirst()
                    .orElse(null);
        }
        return null;
    }

    SortedSet<Finding> findings() {
        SortedSet<Finding> findings = new TreeSet<>();
        for (PartNumber number : kit.quantities().keySet()) {
            Part part = kit.part(number);
            if (part.coat() != null) {
                part.coat().features().stream()
                        .filter(feature -> feature.treat() == Feature.Treat.MASKED && !masked(feature))
                        .forEach(feature ->
                                findings.add(new Finding(FindingKind.NO_MASK, number.text(), name(feature))));
            }
            if (part.bin().isEmpty() && part.source() != Source.DONOR && whole(part) && picked(number)) {
                findings.add(new Finding(FindingKind.LEAF_WITHOUT_BIN, number.text()));
            }
        }
        return findings;
    }

    private boolean masked(Feature feature) {
        return catalogue.workshop().coating().masks().stream()
                .anyMatch(mask -> mask.kind() == feature.kind() && mask.size().equals(feature.size()));
    }

    private static String name(Feature feature) {
        return feature.kind().toString().toLowerCase(Locale.ROOT) + " " + feature.size();
    }

    /** Stores hand it out as it is. */
    private static boolean whole(Part part) {
        return part.contains().isEmpty()
                || part.structure().stocked()
                || part.coat() != null
                || part.structure().joined() == boltlore.catalogue.Joined.WELDED;
    }

    /** Something brings it outside of what is picked whole. */
    private boolean picked(PartNumber number) {
        for (Reason reason : kit.reasons(number)) {
            PartNumber above = new PartNumber(reason.asker().name());
            if (reason.way() != Way.CONTAINS || (!whole(kit.part(above)) && picked(above))) {
                return true;
            }
        }
        return false;
    }

    SortedMap<String, SortedSet<String>> cautions() {
        SortedSet<String> codes = new TreeSet<>();
        kit.quantities()
                .keySet()
                .forEach(number -> codes.addAll(kit.part(number).cautions()));
        if (finishes().values().stream().map(catalogue.finishes()::get).anyMatch(PlainWorkshop::curedHere)) {
            codes.add("oven");
        }
        SortedMap<String, SortedSet<String>> bySheet = new TreeMap<>();
        for (Caution caution : catalogue.workshop().cautions().values()) {
            if (codes.contains(caution.code())) {
                caution.sheets()
                        .forEach(sheet -> bySheet.computeIfAbsent(sheet, name -> new TreeSet<>())
                                .add(caution.code()));
            }
        }
        return bySheet;
    }

    private static boolean curedHere(@Nullable Finish finish) {
        return finish != null && finish.where() instanceof CoatedWhere.OwnOven;
    }
}
