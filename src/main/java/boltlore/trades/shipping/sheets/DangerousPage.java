package boltlore.trades.shipping.sheets;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.shipping.By;
import boltlore.trades.shipping.Consignment;
import boltlore.trades.shipping.DangerousGoods;
import boltlore.trades.shipping.Papers;
import boltlore.trades.shipping.Shipment;
import boltlore.trades.shipping.Told;
import boltlore.trades.shipping.UnNumber;

/** What the dangerous-goods papers would say; only a trained and appointed person makes them out. */
final class DangerousPage {

    /** From memory. */
    private static final String SEALED =
            "New sealed lead-acid batteries may be free of the road rules where they are secured, protected against short"
                    + " circuit and clean outside (special provision 598); the adviser decides. They are counted here.";

    private static final String PASSPORT =
            "Battery passport, one for each battery of an electric vehicle that comes on the EU market from 18 February 2027"
                    + " on: the importer, or who places it there, bears it";

    private DangerousPage() {}

    static PageBuilder of(Shipment shipment, Consignment together, String footer) {
        PageBuilder page = Page.named("Dangerous goods").footer(footer);
        page.title("DRAFT – dangerous goods");
        ShipCautions.draft(page);
        for (DangerousGoods goods : shipment.dangerous()) {
            entry(page, goods, shipment);
        }
        if (shipment.route().by() == By.ROAD) {
            page.heading("Small load by road").add(PointsTable.of(together));
        }
        page.heading("To have at hand").add(atHand(shipment, together));
        ShipCautions.lithium(page, shipment);
        return page.signatures("Packed by (trained)", "Classified and checked by (adviser)", "Handed over by");
    }

    private static void entry(PageBuilder page, DangerousGoods goods, Shipment shipment) {
        page.heading(goods.un() + " in " + Told.crates(goods.crates())).add(EntryTable.of(goods, shipment));
        if (goods.lithium()) {
            page.add(InstructionsTable.of(goods, shipment));
            page.note(LithiumWords.classification());
            LithiumWords.byRoute(goods, shipment).forEach(page::note);
        } else if (goods.un().equals(UnNumber.LEAD_ACID_SEALED.un())) {
            page.note(SEALED);
        }
    }

    private static TableBuilder atHand(Shipment shipment, Consignment together) {
        TableBuilder table = Table.named("at-hand")
                .columns(Column.text("paper", "Document or item").atMost(84), Column.tick("there", "There"));
        boolean relieved = together.points().relieved();
        Papers.atHand(shipment.route().by(), relieved, LithiumWords.testSummaries(shipment))
                .forEach(paper -> table.row().put("paper", paper));
        if (together.dangerous().anyMatch(DangerousGoods::lithium)) {
            table.row().put("paper", PASSPORT);
        }
        table.row().put("paper", "Name of the safety adviser: " + adviser(shipment));
        table.row().put("paper", "Proof that who packs, marks and hands over is trained for it");
        return table;
    }

    private static String adviser(Shipment shipment) {
        String adviser = shipment.shipping().consignor().adviser();
        return adviser.isEmpty() ? "none is named" : adviser;
    }
}
