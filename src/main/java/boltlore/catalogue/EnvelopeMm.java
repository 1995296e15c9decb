package boltlore.catalogue;

/** Outer size in mm. */
public record EnvelopeMm(int length, int width, int height) {

    /** Volume in litres (dm³). */
    public double litres() {
        return (double) length * width * height / 1_000_000;
    }
}
