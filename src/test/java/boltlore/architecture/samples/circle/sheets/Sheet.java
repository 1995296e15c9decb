package boltlore.architecture.samples.circle.sheets;

import boltlore.architecture.samples.circle.bill.Bill;
import java.util.List;

public record Sheet(List<Bill> bills) {
    Bill first() {
        return bills.get(0);
    }
}
