package boltlore.order;

import boltlore.measure.LineName;
import java.util.SortedSet;

/** What becomes of bracket lines that carry nothing in this kit. */
public sealed interface LeftOut {

    /** Nobody has decided: they are in, held back from coating, and each is a finding. */
    record Undecided() implements LeftOut {}

    /** They ship, on purpose. */
    record Keep() implements LeftOut {}

    /** All of them stay out. */
    record AllUnused() implements LeftOut {}

    /** These stay out; the rest ships. */
    record These(SortedSet<LineName> lines) implements LeftOut {}
}
