package boltlore.proof;

import boltlore.catalogue.Accepted;

/** An accepted finding that nothing answers to, and why. */
public record IdleAcceptance(Accepted accepted, String why) {}
