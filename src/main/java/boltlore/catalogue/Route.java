package boltlore.catalogue;

/** The window in which a cable's length must lie: needsMm ≤ length ≤ needsMm + slackMm. */
public record Route(Condition when, int needsMm, int slackMm) {

    public boolean fits(int lengthMm) {
        return lengthMm >= needsMm && lengthMm <= needsMm + slackMm;
    }
}
