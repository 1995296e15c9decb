package boltlore.resolution.rules.facts;

/** The market uses that socket, inlet or language. */
public record MarketUses(Kind kind, String name) {

    public enum Kind {
        SOCKET,
        INLET,
        LANGUAGE
    }
}
