package boltlore.architecture.samples.sound.bill;

import boltlore.architecture.samples.sound.catalogue.Shelf;
import java.time.LocalDate;
import java.util.List;

public record Bill(Shelf shelf, LocalDate date, List<int[]> counts) {}
