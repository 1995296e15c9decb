package boltlore.proof.revision;

import boltlore.catalogue.Change;

/**
 * A note that the later revision holds and the earlier one does not.
 *
 * @param of the part or line in whose history it stands
 */
public record RevisionNote(String of, Change change) {}
