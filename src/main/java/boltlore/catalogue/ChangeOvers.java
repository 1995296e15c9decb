package boltlore.catalogue;

/**
 * What it takes to change the powder in a booth.
 *
 * @param toDarker a trace of the lighter powder does not show in the darker
 * @param toLighter down to the last speck; also where nobody knows which is lighter
 * @param ofRecovery what is to clean besides where overspray was gathered: filters, cyclone, sieve, return hoses
 */
public record ChangeOvers(BoothWork toDarker, BoothWork toLighter, BoothWork ofRecovery) {

    /** Where the workshop has told nothing of them. */
    public static final ChangeOvers NONE = new ChangeOvers(BoothWork.NONE, BoothWork.NONE, BoothWork.NONE);
}
