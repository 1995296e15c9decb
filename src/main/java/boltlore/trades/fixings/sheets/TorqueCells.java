package boltlore.trades.fixings.sheets;

import boltlore.catalogue.Fixing;
import boltlore.measure.Digits;
import boltlore.report.RowBuilder;

/** A torque in the columns 'torque' and 'stands', never without the table and the friction that it stands for. */
final class TorqueCells {

    private TorqueCells() {}

    static void put(RowBuilder row, Fixing fixing) {
        if (fixing.torqueNm() != null && fixing.torqueTable() != null && fixing.friction() != null) {
            row.put("torque", fixing.torqueNm())
                    .put("stands", fixing.torqueTable() + "; friction " + Digits.plain(fixing.friction()));
        }
    }
}
