package boltlore.book.orders;

import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import java.util.Map;

/** Parts of the catalogue that a kit was frozen with, and beside them those of today, which service orders add to it. */
public record PartsToday(Map<PartNumber, Part> parts) {}
