package boltlore.architecture.samples.ring.bill;

import boltlore.architecture.samples.ring.bill.rows.Row;
import java.util.List;

public record Bill(List<Row> rows) {}
