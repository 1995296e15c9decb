package boltlore.trades.testing;

import boltlore.catalogue.Part;
import boltlore.catalogue.Position;

/**
 * Where in the kit something is tested or put.
 *
 * @param piece number of the piece among its like, from 1
 * @param pieces how many of them stand there
 */
public record TestedAt(Position position, Part part, int piece, int pieces) {}
