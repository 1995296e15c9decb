package boltlore.trades.cutting;

import boltlore.catalogue.BarLength;
import boltlore.catalogue.BarStock;
import boltlore.catalogue.Cut;
import boltlore.catalogue.Drawing;
import boltlore.catalogue.Part;
import boltlore.catalogue.Saw;
import boltlore.catalogue.Workshop;
import boltlore.measure.Digits;
import boltlore.measure.Money;
import boltlore.report.CautionNotes;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What the saw needs for one material: the bars drawn, the bars to take, the pieces in the order that they are cut. */
final class SawPage {

    /** The piece at a place of a bar, from 1. */
    private record Piece(SawnBar bar, int place, LaidPiece laid) {

        static Stream<Piece> of(SawnBar bar) {
            return IntStream.range(0, bar.pieces().size())
                    .mapToObj(i -> new Piece(bar, i + 1, bar.pieces().get(i)));
        }

        Part part() {
            return laid.set().part();
        }
    }

    private static final TableSpec<Piece> PIECES = TableSpec.<Piece>named("pieces")
            .whole("bar", "Bar", "", piece -> piece.bar().number())
            .whole("place", "Place", "", Piece::place)
            .decimal("from-head", "From head", "mm", 1, piece -> piece.laid().fromMm())
            .decimal(
                    "length",
                    "Length over all",
                    "mm",
                    1,
                    piece -> piece.laid().cut().lengthMm())
            .column(
                    Column.text("ends", "Ends").in("°").atMost(10),
                    piece -> Cell.of(ends(piece.laid().cut())))
            .text("part", "Part", 16, piece -> piece.part().number().text())
            .text("revision", "Rev", piece -> piece.part().revision())
            .column(Column.text("name", "Name").atMost(24), SawPage::name)
            .text("drawing", "Drawing and issue", 10, piece -> drawing(piece.part()))
            .text("order", "Order", 14, piece -> piece.laid().set().order())
            .whole("number", "No.", "", piece -> piece.laid().set().number())
            .box(Column.tick("cut", "Cut"))
            .box(Column.tick("marked", "Marked"));

    private SawPage() {}

    /** A piece cut to one vehicle looks like any other of its number, and fits no other vehicle. */
    private static Cell name(Piece piece) {
        return Cell.of(
                piece.part().name(),
                piece.laid().cut().measured() == null
                        ? "{0}"
                        : "{0} (to this vehicle's measure: mark it "
                                + piece.laid().set().order() + ", it fits no other)");
    }

    /** All materials, one below the other. */
    static PageBuilder compose(List<MaterialCuts> all, Workshop workshop, String footer) {
        PageBuilder page = Page.named("Saw").footer(footer).title("Bars to saw, lengths in mm");
        CautionNotes.always(page, "cutting-saw", workshop, workshop.language());
        all.forEach(cuts -> add(page, cuts, workshop));
        return page.signatures("Cut by", "Lengths and marks checked by");
    }

    private static void add(PageBuilder page, MaterialCuts cuts, Workshop workshop) {
        String material = cuts.material().name();
        page.heading(cuts.material().says()).add(saw(cuts, workshop.currency()));
        BarPatterns.group(cuts.bars()).forEach(pattern -> page.picture(BarDrawing.draw(pattern, cuts)));
        page.add(bars(cuts, workshop.currency()).about("material", material));
        page.add(PIECES.of(cuts.bars().stream().flatMap(Piece::of).toList()).about("material", material));
    }

    private static ParticularsBuilder saw(MaterialCuts cuts, Currency currency) {
        BarStock stock = cuts.stock();
        Saw saw = stock.saw();
        return Particulars.named("saw-" + cuts.material().name())
                .say("saw", "Saw", saw.says())
                .say("kerf", "Kerf", Digits.plain(saw.kerfMm()) + " mm")
                .say("trim", "Head trim", Digits.plain(saw.headTrimMm()) + " mm, its cut included")
                .say("tail", "Held by the vice", Digits.plain(saw.heldTailMm()) + " mm at the tail, not to be cut")
                .say("keep", "Shortest remnant kept", Digits.plain(stock.keepFromMm()) + " mm")
                .say("lengths", "Bars are bought in", lengths(stock, currency))
                .say("turn", "Mitres nested", stock.turns() ? "yes" : "no");
    }

    /** Which bars the saw takes, their heat numbers, and what becomes of their offcuts. */
    private static TableBuilder bars(MaterialCuts cuts, Currency currency) {
        TableSpec<SawnBar> spec = TableSpec.<SawnBar>named("bars")
                .whole("bar", "Bar", "", SawnBar::number)
                .text("take", "Take", 18, SawPage::source)
                .decimal("length", "Length", "mm", 1, SawnBar::lengthMm)
                .money("cost", "Cost", currency, SawnBar::cost)
                .text("heat-known", "Heat number known", 16, SawnBar::heat)
                .box(Column.blank("heat", "Heat number read on the bar"));
        if (cuts.bars().stream().anyMatch(bar -> !bar.oneHeatWith().isEmpty())) {
            spec.text("together", "Same heat as bar", 8, SawPage::together);
        }
        return spec.whole("pieces", "Pieces", "", bar -> bar.pieces().size())
                .decimal("offcut", "Offcut", "mm", 1, SawnBar::restMm)
                .text("keepOrScrap", "Keep or scrap", 20, SawPage::offcut)
                .box(Column.tick("done", "Done"))
                .of(cuts.bars());
    }

    private static String together(SawnBar bar) {
        return bar.oneHeatWith().stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** 'New bar', 'Remnant BL-0990-2'. */
    static String source(SawnBar bar) {
        Remnant remnant = bar.remnant();
        return remnant == null ? "New bar" : "Remnant " + remnant.name();
    }

    /** What becomes of what is left of a bar. */
    static String offcut(SawnBar bar) {
        if (bar.isKept()) {
            return "keep, mark it " + bar.keptAs();
        }
        return bar.restMm().signum() == 0 ? "" : "scrap";
    }

    /** '6000 mm at EUR 36.39, 3000 mm at EUR 19.83'. */
    private static String lengths(BarStock stock, Currency currency) {
        return stock.lengths().stream()
                .sorted(Comparator.comparingInt(BarLength::lengthMm).reversed())
                .map(bar -> bar.lengthMm() + " mm at " + Money.says(bar.cost(), currency))
                .collect(Collectors.joining(", "));
    }

    /** '45/0', or nothing where both ends are square. */
    private static String ends(Cut cut) {
        boolean square = cut.endAngles().stream().allMatch(angle -> angle.signum() == 0);
        return square ? "" : cut.endAngles().stream().map(Digits::plain).collect(Collectors.joining("/"));
    }

    /** 'D-PV-142 B'; empty where the part has none. */
    static String drawing(Part part) {
        Drawing drawing = part.making().drawing();
        return drawing == null ? "" : drawing.shown();
    }
}
