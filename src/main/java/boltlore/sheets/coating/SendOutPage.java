package boltlore.sheets.coating;

import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Coater;
import boltlore.catalogue.Workshop;
import boltlore.coating.SendOut;
import boltlore.sheets.Column;
import boltlore.sheets.Kind;
import boltlore.sheets.Page;
import boltlore.sheets.PageBuilder;
import boltlore.sheets.Particulars;
import boltlore.sheets.ParticularsBuilder;
import java.math.BigDecimal;
import java.util.Currency;

/** One send-out: the list that goes with the pieces to the coater, and is counted off when they come back. */
final class SendOutPage {

    private static final Column[] BY_HAND = {
        Column.blank("out", "Out"), Column.blank("back", "Back"), Column.blank("rejected", "Rejected")
    };

    private SendOutPage() {}

    static PageBuilder of(SendOut sendOut, Workshop workshop, String footer) {
        String finish = sendOut.finish().says().english();
        PageBuilder page =
                Page.named("Send-out " + sendOut.number()).landscape().footer(footer);
        page.title("Send-out " + sendOut.number() + ": " + finish).add(particulars(sendOut, workshop.currency()));
        CoatingCautions.on(page, CoatingCautions.FOR_THE_COATER);
        page.note(masks(sendOut)).add(PartsTable.of(sendOut.rows(), BY_HAND));
        if (!sendOut.coater().fitsMasks()) {
            MasksTable.on(page, sendOut.rows(), workshop.coating());
        }
        EarthTable.on(page, sendOut.rows());
        return page.signatures("Counted out by", "Taken over by the coater", "Counted back by", "Inspected by");
    }

    private static ParticularsBuilder particulars(SendOut sendOut, Currency currency) {
        Coater coater = sendOut.coater();
        ParticularsBuilder particulars = Particulars.named("send-out")
                .say("coater", "Coater", coater.name())
                .say("out", "Out by", CoatWords.day(sendOut.outBy()))
                .say("back", "Back by", CoatWords.day(sendOut.backBy()))
                .say("turn-round", "Turn-round", CoatWords.count(coater.turnRoundDays(), "day", "days"))
                .say("fits-masks", "Masks fitted by", coater.fitsMasks() ? "the coater" : "us");
        price(particulars, sendOut, currency);
        return particulars.leave("certificate", "Coater's certificate");
    }

    private static void price(ParticularsBuilder particulars, SendOut sendOut, Currency currency) {
        CoatedWhere where = sendOut.finish().where();
        if (where instanceof CoatedWhere.OutsideByArea byArea) {
            say(particulars, "rate", "Price for 1 m²", byArea.pricePerM2(), currency);
        } else if (where instanceof CoatedWhere.OutsideByPiece byPiece) {
            say(particulars, "rate", "Price for 1 piece", byPiece.pricePerPiece(), currency);
        }
        say(particulars, "price", "Price of all", sendOut.price(), currency);
    }

    private static void say(
            ParticularsBuilder particulars, String key, String label, BigDecimal amount, Currency currency) {
        particulars.say(key, label, Kind.money(currency), amount);
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
