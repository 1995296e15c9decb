package boltlore.trades.bill.sheets;

/** Names of the workbook's pages, which formulas go by. */
final class PageNames {

    static final String ORDER = "Order";
    static final String FINDINGS = "Findings";
    static final String BILL = "Bill";
    static final String TO_BUY = "To buy";
    static final String TO_MAKE = "To make";
    static final String JOB_CARDS = "Job cards";

    private PageNames() {}
}
