package boltlore.catalogue;

/**
 * How the coating shop spends its days.
 *
 * @param dayMinutes in which ovens are worked on a working day, or 0 where nobody has told
 * @param roundDays calendar days of need that are coated in one round through the colours, or 0 for all in one round
 */
public record CoatingTime(int dayMinutes, int roundDays) {

    /** Where the workshop has told nothing of it. */
    public static final CoatingTime NONE = new CoatingTime(0, 0);
}
