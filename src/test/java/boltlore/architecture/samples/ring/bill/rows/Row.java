package boltlore.architecture.samples.ring.bill.rows;

import boltlore.architecture.samples.ring.bill.Bill;

public record Row(Bill of) {}
