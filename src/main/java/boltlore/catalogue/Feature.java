package boltlore.catalogue;

/** A thread, face or earth point of a coated part that must stay bare: masked before, or chased after coating. */
public record Feature(Kind kind, String size, int count, Treat treat) {

    public enum Kind {
        THREAD,
        EARTH,
        FACE
    }

    public enum Treat {
        MASKED,
        CHASED
    }
}
