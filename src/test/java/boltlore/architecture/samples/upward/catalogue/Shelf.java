package boltlore.architecture.samples.upward.catalogue;

import boltlore.architecture.samples.upward.bill.Bill;

public record Shelf(Bill bill) {}
