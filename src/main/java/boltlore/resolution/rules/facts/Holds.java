package boltlore.resolution.rules.facts;

/** The condition of that key holds; the key of conditions that the choices alone make true is {@link #ALWAYS}. */
public record Holds(String condition) {

    public static final String ALWAYS = "always";
    public static final String NEVER = "never";
}
