package boltlore.trades.cutting.sheets;

import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import boltlore.report.Workbook;
import boltlore.report.WorkbookBuilder;
import boltlore.trades.cutting.CutPlan;
import boltlore.trades.cutting.MaterialCuts;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;

/** The cutting list of one order, or of several that are cut together. */
public final class CutSheet {

    public static final String FILE = "cutting-list";

    private CutSheet() {}

    public static Workbook of(CutPlan plan, Workshop workshop) {
        String footer = "Cutting list, " + CutWords.orders(plan);
        WorkbookBuilder workbook =
                Workbook.of(FILE, "Cutting list").about(CutWords.orders(plan)).by(workshop.name());
        placed(plan).ifPresent(workbook::dated);
        workbook.page(FrontPage.of(plan, workshop, footer));
        for (MaterialCuts cuts : plan.materials()) {
            workbook.page(MaterialPage.of(cuts, footer));
        }
        if (!plan.blanks().isEmpty()) {
            workbook.page(BlanksPage.of(plan.blanks(), footer));
        }
        if (RackPage.speaksOf(plan)) {
            workbook.page(RackPage.of(plan, footer));
        }
        if (!plan.heldBack().isEmpty()) {
            workbook.page(HeldBackPage.of(plan.heldBack(), footer));
        }
        return workbook.build();
    }

    /** The day of the latest order: the list cannot be older. */
    private static Optional<LocalDate> placed(CutPlan plan) {
        return plan.orders().stream()
                .map(Order::placed)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder());
    }
}
