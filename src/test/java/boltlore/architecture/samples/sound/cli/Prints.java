package boltlore.architecture.samples.sound.cli;

import boltlore.architecture.samples.sound.bill.Bill;
import boltlore.architecture.samples.sound.catalogue.Shelf;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import picocli.CommandLine.Command;

@Command(name = "prints")
public final class Prints {
    Bill bill() {
        return new Bill(new Shelf(1), LocalDate.now(ZoneOffset.UTC), List.of(new int[0]));
    }
}
