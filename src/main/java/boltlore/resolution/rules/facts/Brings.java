package boltlore.resolution.rules.facts;

import boltlore.measure.PartNumber;
import boltlore.resolution.Asker;
import boltlore.resolution.Way;

/** What an asker brings that way, when the condition holds. */
public record Brings(Asker asker, Way way, PartNumber part, String condition) {}
