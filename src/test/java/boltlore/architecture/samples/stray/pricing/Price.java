package boltlore.architecture.samples.stray.pricing;

import org.slf4j.Logger;

public record Price(Logger log) {}
