package boltlore.architecture.samples.sideways.picking;

import boltlore.architecture.samples.sideways.pricing.Price;

public record Pick(Price price) {}
