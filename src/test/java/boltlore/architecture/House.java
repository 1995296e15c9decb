package boltlore.architecture;

import java.util.List;
import java.util.Map;

/** The plan of the house: every package, what each uses, and where each library lives. */
final class House {

    /**
     * From the bottom to the top; a package uses only what stands above its line. The test that finds another house than
     * this one leaves this file as it should be in {@code target/architecture}.
     */
    static final String PLAN = """
            trades.scheduling.finite:
            grid:
            walking:
            measure:
            netting: measure
            faults:
            grid.ods: faults grid
            json: faults measure
            book: faults json measure
            book.db: book faults json
            csv: faults measure
            findings: measure
            catalogue: measure
            catalogue.json: catalogue faults json measure
            choices: catalogue measure
            order: catalogue choices measure
            order.json: catalogue choices faults json measure order
            power: catalogue choices measure
            logic: catalogue choices measure
            resolution: catalogue choices faults findings measure order
            resolution.rules: catalogue choices faults measure order resolution
            bill: catalogue choices measure order resolution
            explanation: bill catalogue choices findings measure order power resolution
            report.drawing:
            report: catalogue findings measure report.drawing
            report.html: report report.drawing
            report.csv: measure report
            report.json: findings json report
            report.text: measure report report.drawing
            report.xlsx: faults grid report report.drawing
            bring: catalogue catalogue.json csv explanation faults grid grid.ods json measure report report.xlsx
            exports: faults json report
            proof: catalogue choices faults findings logic measure order resolution
            proof.fits: catalogue choices findings logic measure proof
            answers: bill catalogue choices explanation faults findings measure order proof.fits resolution
                resolution.rules
            proof.kinds: catalogue choices findings logic measure proof proof.fits resolution
            proof.sample: catalogue choices logic
            proof.evidence: catalogue choices logic measure proof
            proof.revision: catalogue choices logic measure proof
            proof.json: catalogue choices json logic measure proof proof.revision
            proof.sheets: catalogue findings logic proof report
            trades: bill catalogue choices faults findings json measure order report resolution
            trades.picking: bill catalogue explanation faults findings measure order report resolution trades walking
            trades.fixings: bill catalogue faults findings measure order proof.fits report report.drawing resolution
                trades trades.picking
            trades.coating: bill catalogue choices csv faults findings json measure order report report.drawing
                resolution trades
            trades.weighing: bill catalogue choices faults findings measure order report report.drawing resolution
                trades trades.coating
            trades.driving: bill catalogue choices faults findings measure order report report.drawing trades
                trades.weighing
            trades.mounting: bill catalogue choices faults findings logic measure order proof report trades
                trades.fixings trades.weighing
            trades.braking: bill catalogue choices faults findings order report trades trades.weighing
            trades.costing.path: bill catalogue choices measure order resolution trades.coating
            trades.costing: bill catalogue measure order trades.coating trades.costing.path
            trades.buying: bill catalogue faults findings measure netting order report resolution trades trades.costing
                trades.costing.path trades.picking
            trades.costing.cost: bill catalogue choices measure order resolution trades.coating trades.costing
            trades.costing.quote: bill catalogue choices faults json measure order order.json resolution trades
                trades.costing trades.costing.cost trades.costing.path
            trades.scheduling: catalogue faults findings measure order report report.drawing trades trades.coating
                trades.costing trades.costing.cost trades.costing.path trades.costing.quote trades.scheduling.finite
            trades.shipping: bill catalogue choices explanation faults findings measure order report report.drawing
                resolution trades trades.costing trades.costing.quote trades.picking
            trades.coating.written: csv faults json trades.coating
            trades.costing.sheets: bill catalogue choices explanation faults findings measure order power report
                report.drawing resolution trades trades.costing trades.costing.cost trades.costing.path
                trades.costing.quote trades.weighing
            choosing: bill catalogue choices faults findings logic measure order proof proof.kinds resolution
                trades.coating trades.costing trades.costing.cost trades.costing.path trades.costing.quote
            asking: catalogue choices choosing faults logic measure order order.json trades.costing trades.costing.cost
                trades.costing.quote
            choosing.json: catalogue choices choosing explanation json logic measure order resolution
                trades.costing.quote
            trades.spares: bill catalogue faults findings measure order report trades
            trades.bill.sheets: bill catalogue choices explanation findings measure order report resolution trades
                trades.coating trades.costing trades.costing.cost trades.costing.path trades.costing.quote
                trades.picking
            trades.charging: bill catalogue choices faults findings logic measure power proof report report.drawing
                resolution trades
            trades.cooling: bill catalogue choices faults findings measure order report trades trades.charging
            checking: bill catalogue choices findings measure resolution trades.charging trades.fixings trades.picking
                trades.shipping
            trades.testing: bill catalogue choices csv faults findings json measure order power report report.csv
                report.drawing resolution trades trades.charging
            answers.json: answers bill catalogue choices explanation findings json measure order report.json resolution
                resolution.rules trades
            trades.cutting.packing: measure
            trades.cutting: bill catalogue choices faults findings json measure order report report.drawing resolution
                trades trades.cutting.packing
            trades.orders: bill choices explanation faults findings order proof.fits report report.csv report.html
                report.json report.xlsx resolution trades trades.bill.sheets trades.braking trades.charging
                trades.coating trades.cooling trades.costing.quote trades.costing.sheets trades.cutting trades.driving
                trades.fixings trades.mounting trades.picking trades.scheduling trades.shipping trades.spares
                trades.testing trades.weighing
            book.orders: answers bill book book.db catalogue catalogue.json choices faults findings json measure netting
                order order.json resolution resolution.rules trades trades.buying trades.costing trades.costing.cost
                trades.costing.quote trades.orders
            desk.frame: book book.db book.orders catalogue faults json measure report report.html trades.orders
            desk.sheets: answers bill book book.db book.orders choices choosing desk.frame explanation faults findings
                order report report.html resolution trades trades.costing.quote trades.orders
            desk.people: book.db desk.frame faults
            desk.sales: answers asking book book.db book.orders catalogue choices choosing desk.frame desk.sheets
                explanation faults json logic measure order resolution trades trades.costing trades.costing.quote
            desk.engineering: answers bill book book.db book.orders catalogue catalogue.json choices choosing desk.frame
                desk.sheets faults findings json logic measure proof proof.kinds proof.revision resolution trades
            book.stores: bill book book.db book.orders catalogue faults findings measure netting order trades
                trades.buying trades.coating trades.costing.path trades.cutting trades.picking trades.shipping
            desk.stores: book book.db book.orders book.stores catalogue desk.frame faults json measure netting report
                trades trades.buying trades.picking
            desk.office: book book.db book.orders catalogue desk.frame desk.stores faults measure report trades
                trades.scheduling
            desk.fabrication: book book.db book.orders book.stores catalogue desk.frame faults findings json measure
                report trades trades.coating trades.coating.written trades.cutting
            desk.bench: book book.db book.orders book.stores catalogue desk.frame faults findings json measure report
                trades trades.shipping trades.testing
            desk: book book.db book.orders desk.bench desk.engineering desk.fabrication desk.frame desk.office
                desk.sales desk.sheets desk.stores faults order order.json
            cli: answers answers.json asking bill book book.db book.orders book.stores bring catalogue catalogue.json
                checking choices choosing choosing.json csv desk desk.frame desk.people explanation exports faults
                findings json logic measure netting order order.json proof proof.evidence proof.json proof.kinds
                proof.revision proof.sample proof.sheets report report.json report.text report.xlsx resolution
                resolution.rules trades trades.buying trades.charging trades.coating trades.coating.written
                trades.costing trades.costing.cost trades.costing.quote trades.cutting trades.mounting trades.orders
                trades.picking trades.testing walking
            """;

    /** Library root to the one package that may know it. */
    static final Map<String, String> LIBRARIES = Map.ofEntries(
            Map.entry("org.drools", "resolution.rules"),
            Map.entry("org.kie", "resolution.rules"),
            Map.entry("com.fasterxml.jackson", "json"),
            Map.entry("org.logicng", "logic"),
            Map.entry("org.apache.poi", "report.xlsx"),
            Map.entry("org.openxmlformats", "report.xlsx"),
            Map.entry("org.apache.xmlbeans", "report.xlsx"),
            Map.entry("org.apache.commons.compress", "report.xlsx"),
            Map.entry("org.apache.commons.csv", "csv"),
            Map.entry("com.google.zxing", "report.drawing"),
            Map.entry("picocli", "cli"),
            Map.entry("io.javalin", "desk.frame"),
            Map.entry("org.eclipse.jetty", "desk.frame"),
            Map.entry("jakarta.servlet", "desk.frame"),
            Map.entry("kotlin", "desk.frame"),
            Map.entry("gg.jte", "desk.frame"),
            Map.entry("org.jsoup", "desk.frame"),
            Map.entry("com.password4j", "desk.people"),
            Map.entry("org.jdbi", "book.db"),
            Map.entry("org.flywaydb", "book.db"),
            Map.entry("com.zaxxer.hikari", "book.db"),
            Map.entry("org.sqlite", "book.db"),
            Map.entry("java.sql", "book.db"),
            Map.entry("javax.sql", "book.db"));

    /** The packages that touch the world as it is now; everything else is told the date. */
    static final List<String> WITH_A_CLOCK = List.of("cli");

    private House() {}
}
