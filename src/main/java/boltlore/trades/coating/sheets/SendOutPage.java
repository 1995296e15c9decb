package boltlore.trades.coating.sheets;

import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Workshop;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.coating.SendOut;
import java.math.BigDecimal;
import java.util.Currency;

/** One send-out: the list that goes with the pieces to the coater, and is counted off when they come back. */
final class SendOutPage {

    private static final Column[] BY_HAND = {
        Column.blank("out", "Out"), Column.blank("back", "Back"), Column.blank("rejected", "Rejected")
    };

    private SendOutPage() {}

    static PageBuilder of(SendOut sendOut, Workshop workshop, String footer) {
        PageBuilder page = Page.named(name(sendOut)).landscape().footer(footer);
        page.title(title(sendOut)).add(particulars(sendOut, workshop.currency()));
        CoatingCautions.on(page, CoatingCautions.FOR_THE_COATER);
        page.note(SendOutWords.masks(sendOut));
        TooBigTable.outside(page, sendOut.tooBig());
        if (!sendOut.coater().fitsMasks()) {
            MasksTable.on(page, sendOut.rows(), workshop.coating());
        }
        page.heading("Pieces").add(PartsTable.of(sendOut.rows(), BY_HAND));
        return page.signatures("Counted out by", "Taken over by the coater", "Counted back and inspected by");
    }

    /** What is measured here once the pieces are back; only for pieces with earth points. */
    static PageBuilder back(SendOut sendOut, String footer) {
        PageBuilder page = Page.named(name(sendOut) + " back").landscape().footer(footer);
        EarthTable.on(page.title(title(sendOut) + ", back"), sendOut.rows());
        return page.signatures("Released to stores by");
    }

    private static String name(SendOut sendOut) {
        return "Send-out " + sendOut.number();
    }

    private static String title(SendOut sendOut) {
        String finish = sendOut.finish().says().english();
        return name(sendOut) + ": " + finish + ", by " + sendOut.coater().name();
    }

    private static ParticularsBuilder particulars(SendOut sendOut, Currency currency) {
        ParticularsBuilder particulars = Particulars.named("send-out")
                .say("out", "Out by", CoatWords.day(sendOut.outBy()))
                .say("back", "Back by", CoatWords.day(sendOut.backBy()))
                .say("fits-masks", "Masks fitted by", sendOut.coater().fitsMasks() ? "the coater" : "us");
        price(particulars, sendOut, currency);
        return particulars.leave("certificate", "Coater's certificate");
    }

    private static void price(ParticularsBuilder particulars, SendOut sendOut, Currency currency) {
        CoatedWhere where = sendOut.finish().where();
        if (where instanceof CoatedWhere.OutsideByArea byArea) {
            say(particulars, "rate", "Price for 1 m²", byArea.pricePerM2(), currency);
        } else if (where instanceof CoatedWhere.OutsideByPiece byPiece) {
            say(particulars, "rate", "Price for 1 piece", byPiece.pricePerPiece(), currency);
        } else {
            particulars.say("film", "Film and cure", SendOutWords.powder(sendOut.finish()));
        }
        say(particulars, "price", "Price of all", sendOut.price(), currency);
    }

    private static void say(
            ParticularsBuilder particulars, String key, String label, BigDecimal amount, Currency currency) {
        particulars.say(key, label, Kind.money(currency), amount);
    }
}
