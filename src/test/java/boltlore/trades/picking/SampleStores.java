package boltlore.trades.picking;

import static boltlore.sketch.PartSketch.bolt;
import static boltlore.sketch.PartSketch.bought;
import static boltlore.sketch.PartSketch.made;
import static boltlore.sketch.PositionSketch.at;
import static boltlore.sketch.PositionSketch.atJoint;
import static boltlore.sketch.PositionSketch.each;
import static boltlore.sketch.PositionSketch.is;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Joined;
import boltlore.catalogue.Tracked;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.sketch.PositionSketch;
import boltlore.trades.KitInWork;
import java.time.LocalDate;

/** A van kit with a heater, a battery box, a dash panel and, on request, a compressor on its bracket. */
public final class SampleStores {

    public static final Catalogue CATALOGUE = catalogue();

    private SampleStores() {}

    public static OrderSketch withAir() {
        return new OrderSketch(CATALOGUE).choose("air", "fitted");
    }

    public static OrderSketch withoutAir() {
        return new OrderSketch(CATALOGUE).choose("air", "none");
    }

    public static PickingList list(OrderSketch order) {
        return PickingList.of(order.plan(), order.bill());
    }

    public static KitInWork kit(OrderSketch order) {
        return new KitInWork(order.plan(), order.bill(), LocalDate.of(2025, 3, 14));
    }

    private static Catalogue catalogue() {
        CatalogueSketch catalogue = new CatalogueSketch().option("air", "fitted", "none");
        fixings(catalogue);
        heater(catalogue);
        battery(catalogue);
        compressor(catalogue);
        return catalogue.draw();
    }

    private static void fixings(CatalogueSketch catalogue) {
        catalogue
                .part(bolt("FX-M8", "M8", "24.6").bin("F-01-01-A-01"))
                .part(bolt("FX-M12", "M12", "84").bin("F-01-01-A-02"))
                .part(bought("TL-KEY").bin("F-02-01-A-01"));
    }

    private static void heater(CatalogueSketch catalogue) {
        catalogue
                .part(bought("HE-1").bin("H-02-01-A-01").cautions("high-voltage", "oven"))
                .part(bought("HO-16").unit("m").bin("C-01-01-A-01").tracked(Tracked.LOT))
                .part(made("PN-1").coat("small", "0.05").bin("C-01-02-A-01"))
                .part(made("BR-1").coat("chassis", "0.05").bin("C-02-01-A-01"))
                .position(at("heater").stage("front").bag("F1").line("heater", "HE-1", "1", each("FX-M8", "4")))
                .position(at("hose").stage("front").line("hose", "HO-16", "1.5"))
                .position(at("panel").stage("cabin").bag("C1").line("panel", "PN-1", "2", each("FX-M8", "4")))
                .position(at("foot").stage("rear").line("foot", "BR-1", "2", each("FX-M12", "1")));
    }

    /** The box is kept in stock with its modules in it; the tray stand is bolted together from what stores hand out. */
    private static void battery(CatalogueSketch catalogue) {
        catalogue
                .part(bought("BM-1").cautions("lithium", "lift-two").bin("H-01-01-A-02"))
                .part(made("BX-1")
                        .contains("BM-1", "4")
                        .joined(Joined.BOLTED)
                        .stocked()
                        .bin("H-01-01-A-01"))
                .part(bought("TS-LEG").bin("H-01-01-A-03"))
                .part(made("TS-1").contains("TS-LEG", "4").joined(Joined.BOLTED).bin(""))
                .position(at("box").stage("rear").line("box", "BX-1", "1"))
                .position(at("stand").stage("rear").line("stand", "TS-1", "2"));
    }

    private static void compressor(CatalogueSketch catalogue) {
        PositionSketch bracket = at("compressor-bracket")
                .stage("front")
                .bag("F2")
                .bracket(
                        "compressor-bracket",
                        "BR-9",
                        "compressor",
                        each("SP-1", "2"),
                        atJoint("cross-member", "FX-M12", "4"),
                        atJoint("sill", "FX-M8", "3"));
        catalogue
                .part(bought("CO-1").bin("H-03-01-A-01").tracked(Tracked.SERIAL))
                .part(made("BR-9").coat("chassis", "0.05").bin("C-03-01-A-01"))
                .part(bought("SP-1").bin("F-01-02-A-01"))
                .part(made("XM-1").bin(""))
                .position(bracket)
                .position(at("compressor").line("compressor", "CO-1", "1", is("air", "fitted")))
                .position(at("cross-member")
                        .stage("rear")
                        .line("cross-member", "XM-1", "1", atJoint("cross-member", "FX-M12", "2")));
    }
}
