package boltlore.cli;

import boltlore.report.SheetFile;
import java.util.List;

/** What a trade has made of one order. */
interface WorkedOrder {

    /** Of the order, and of the folder that its sheets are written into. */
    String name();

    /** Paths within that folder. */
    List<SheetFile> files();
}
