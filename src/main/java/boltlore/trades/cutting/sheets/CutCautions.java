package boltlore.trades.cutting.sheets;

import boltlore.report.PageBuilder;
import boltlore.trades.cutting.CutPlan;

/** What can hurt at the saw and at the bending press, in words. */
final class CutCautions {

    private static final String LEAD = "Caution";

    private CutCautions() {}

    /** All that apply to the plan, on its first page. */
    static void on(PageBuilder page, CutPlan plan) {
        if (!plan.materials().isEmpty()) {
            page.caution(
                    LEAD,
                    "Saws cut hands: trained people only, guards on, work clamped, eyes and ears protected, no loose sleeves"
                            + " and no gloves near a running blade; stop and lock off the saw before you clear it. Follow its"
                            + " maker's instructions and your local rules.");
            page.caution(
                    LEAD,
                    "Bars are long and heavy: two people or a hoist, both ends held up, and look behind you before you turn."
                            + " Rests that roll or tip belong in the rack. Follow your local rules for lifting.");
        }
        page.caution(
                LEAD,
                "Cut edges, burrs and swarf are sharp: gloves to handle pieces away from the blade, never clear swarf by hand"
                        + " or with compressed air; deburr before the piece goes on.");
        if (!plan.blanks().isEmpty()) {
            page.caution(
                    LEAD,
                    "Cutting by beam or plasma and bending presses blind, burn and crush: trained people only, guards and fume"
                            + " extraction on, fingers clear of the tools; keep to your local rules.");
        }
    }

    /** Where blanks are cut and bent. */
    static void atThePress(PageBuilder page) {
        page.caution(
                LEAD,
                "Sharp edges; beam, plasma and press: read the cautions on the first page, and keep to your local rules.");
    }

    /** On each page for the saw, which may be torn off the first. */
    static void reminder(PageBuilder page) {
        page.caution(
                LEAD,
                "Blade, sharp edges, long and heavy bars: read the cautions on the first page, and keep to your local rules.");
    }
}
