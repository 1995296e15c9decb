package boltlore.architecture.samples.stray.bill;

import picocli.CommandLine.Command;

@Command(name = "bill")
public record Bill(int rows) {}
