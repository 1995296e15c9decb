package boltlore.trades.cutting;

import boltlore.catalogue.BarLength;
import boltlore.catalogue.BarStock;
import boltlore.catalogue.Cut;
import boltlore.catalogue.Material;
import boltlore.catalogue.Part;
import boltlore.catalogue.Saw;
import boltlore.sketch.PartSketch;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A rack of one material in the making, its saw, and the parts that want pieces from it. */
final class Rack {

    static final String MATERIAL = "tube";

    private final List<BarLength> bars = new ArrayList<>();
    private final List<PieceSet> sets = new ArrayList<>();
    private final List<Remnant> remnants = new ArrayList<>();
    private String kerfMm = "0";
    private String headTrimMm = "0";
    private String heldTailMm = "0";
    private String acrossMm = "40";
    private boolean turns = true;
    private String keepFromMm = "300";

    Rack bar(int lengthMm, String cost) {
        bars.add(new BarLength(lengthMm, new BigDecimal(cost)));
        return this;
    }

    Rack saw(String kerf, String headTrim) {
        kerfMm = kerf;
        headTrimMm = headTrim;
        return this;
    }

    Rack heldTail(String mm) {
        heldTailMm = mm;
        return this;
    }

    Rack across(String mm) {
        acrossMm = mm;
        return this;
    }

    Rack notTurning() {
        turns = false;
        return this;
    }

    Rack keepFrom(String mm) {
        keepFromMm = mm;
        return this;
    }

    Rack remnant(String name, String lengthMm, String heat) {
        remnants.add(new Remnant(name, MATERIAL, new BigDecimal(lengthMm), heat));
        return this;
    }

    /** Parts of one square piece each. */
    Rack pieces(int count, String lengthMm) {
        for (int i = 0; i < count; i++) {
            part(piece(1, lengthMm, 0, 0));
        }
        return this;
    }

    Rack slanted(int count, String lengthMm, int left, int right) {
        for (int i = 0; i < count; i++) {
            part(piece(1, lengthMm, left, right));
        }
        return this;
    }

    /** One part with all these pieces. */
    Rack part(Cut... cuts) {
        Part part = PartSketch.made("P-" + (sets.size() + 1)).draw();
        sets.add(new PieceSet("BL-1", part, 1, List.of(cuts)));
        return this;
    }

    static Cut piece(int count, String lengthMm, int left, int right) {
        return new Cut(
                MATERIAL,
                new BigDecimal(lengthMm),
                count,
                Stream.of(left, right).map(BigDecimal::valueOf).toList());
    }

    List<String> marks() {
        return sets.stream().map(PieceSet::mark).toList();
    }

    Rack withoutRemnants() {
        Rack rack = new Rack()
                .saw(kerfMm, headTrimMm)
                .heldTail(heldTailMm)
                .across(acrossMm)
                .keepFrom(keepFromMm);
        rack.bars.addAll(bars);
        rack.sets.addAll(sets);
        return turns ? rack : rack.notTurning();
    }

    MaterialPlanner planner() {
        Saw saw = new Saw(
                "saw",
                "Saw",
                new BigDecimal(kerfMm),
                new BigDecimal(headTrimMm),
                new BigDecimal(heldTailMm),
                new BigDecimal("60"));
        BarStock stock = new BarStock(saw, new BigDecimal(acrossMm), turns, new BigDecimal(keepFromMm), bars);
        Material material =
                new Material(MATERIAL, "Tube", "tube", null, new BigDecimal("7850"), null, null, stock, null);
        return new MaterialPlanner(material, sets, remnants);
    }

    MaterialCuts plan() {
        return planner().plan(1, number -> "BL-1-" + number);
    }
}
