package boltlore.architecture.samples.inner.resolution;

import boltlore.architecture.samples.inner.resolution.rules.Rules;

public record Resolver(Rules rules) {}
