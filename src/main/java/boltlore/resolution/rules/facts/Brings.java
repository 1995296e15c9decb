package boltlore.resolution.rules.facts;

import boltlore.measure.PartNumber;
import boltlore.resolution.Requirer;
import boltlore.resolution.Way;

/** What an asker brings that way, when the condition holds. */
public record Brings(Requirer asker, Way way, PartNumber part, ConditionKey condition) {}
