package boltlore.architecture.samples.circle.bill;

import boltlore.architecture.samples.circle.sheets.Sheet;

public record Bill(Sheet sheet) {}
