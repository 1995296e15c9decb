package boltlore.trades.coating;

import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Finish;
import boltlore.catalogue.PowderCoat;
import boltlore.catalogue.Workshop;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.ReportBuilder;
import boltlore.report.TableSpec;
import java.util.Currency;
import java.util.stream.Collectors;

/** One send-out: the list that goes with the pieces to the coater, and is counted off when they come back. */
final class SendOutPage {

    private static final Column[] BY_HAND = {
        Column.tick("out", "Out"), Column.tick("back", "Back"), Column.tick("rejected", "Rejected")
    };

    private static final TableSpec<TooBig> WHY =
            CoatWords.named(TableSpec.<TooBig>named("too-big"), 28, TooBig::row).text("why", "Why", 90, TooBig::why);

    private SendOutPage() {}

    /** The list, and where there are earth points what is measured here once the pieces are back. */
    static void on(ReportBuilder report, SendOut sendOut, Workshop workshop, String footer) {
        PageBuilder page = list(sendOut, workshop, footer);
        if (EarthTable.speaksOf(sendOut.rows())) {
            page.heading("Once they are back: earth points").note(EarthTable.BARE);
            EarthTable.on(page, sendOut.rows(), "send-out", sendOut.number());
            page.signatures("Released to stores by");
        }
        report.page(page);
    }

    private static PageBuilder list(SendOut sendOut, Workshop workshop, String footer) {
        PageBuilder page = page(sendOut, workshop.language(), footer).add(particulars(sendOut, workshop.currency()));
        CautionNotes.always(page, "coating-outside", workshop, workshop.language());
        page.note(masks(sendOut));
        if (!sendOut.tooBig().isEmpty()) {
            page.heading("Why they go out by themselves")
                    .add(WHY.of(sendOut.tooBig()).about("send-out", sendOut.number()));
        }
        if (!sendOut.coater().fitsMasks() && PartsTable.masks(sendOut.rows()) > 0) {
            page.heading("Masks").add(MasksTable.compose(sendOut, workshop.coating()));
        }
        page.heading("Pieces").add(PartsTable.compose(sendOut.rows(), BY_HAND).about("send-out", sendOut.number()));
        return page.signatures("Counted out by", "Taken over by the coater", "Counted back and inspected by");
    }

    private static PageBuilder page(SendOut sendOut, String language, String footer) {
        String number = "Send-out " + sendOut.number();
        return Page.named(number)
                .footer(footer)
                .title(number + ": " + sendOut.finish().says().in(language) + ", by "
                        + sendOut.coater().name());
    }

    private static ParticularsBuilder particulars(SendOut sendOut, Currency currency) {
        ParticularsBuilder says = Particulars.named("send-out-" + sendOut.number())
                .say("out", "Out by", CoatWords.day(sendOut.outBy()))
                .say("back", "Back by", CoatWords.day(sendOut.backBy()))
                .say("fits-masks", "Masks fitted by", sendOut.coater().fitsMasks() ? "the coater" : "us");
        CoatedWhere where = sendOut.finish().where();
        if (where instanceof CoatedWhere.OutsideByArea byArea) {
            says.say("rate", "Price for 1 m²", Kind.money(currency), byArea.pricePerM2());
        } else if (where instanceof CoatedWhere.OutsideByPiece byPiece) {
            says.say("rate", "Price for 1 piece", Kind.money(currency), byPiece.pricePerPiece());
        } else {
            says.say("film", "Film and cure", powder(sendOut.finish()));
        }
        return says.say("price", "Price of all", Kind.money(currency), sendOut.price())
                .leave("certificate", "Coater's certificate");
    }

    /** Powder, film and cure of each coat, for a coater who puts on a finish of ours. */
    private static String powder(Finish finish) {
        return finish.coats().stream().map(SendOutPage::coat).collect(Collectors.joining("; then "));
    }

    private static String coat(PowderCoat coat) {
        return coat.powder() + " " + coat.filmMinUm() + "–" + coat.filmMaxUm() + " µm, " + CoatWords.cure(coat);
    }

    private static String masks(SendOut sendOut) {
        if (PartsTable.masks(sendOut.rows()) == 0) {
            return "No piece is masked. Film and its certificate as the order to the coater says.";
        }
        String who = sendOut.coater().fitsMasks()
                ? "The coater fits the masks that the table names"
                : "We fit the masks before the pieces leave and count them off when they are back";
        return who + ". Threads, faces and earth points named as masked come back bare; film and its certificate as the"
                + " order to the coater says.";
    }
}
