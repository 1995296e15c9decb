package boltlore.resolution.rules.facts;

/** Stands for a condition among the facts; conditions of which the choices leave the same open have one key. */
public record ConditionKey(int number) {

    /** Of conditions that the choices alone make true. */
    public static final ConditionKey ALWAYS = new ConditionKey(-1);

    /** Of conditions that the choices alone make false. */
    public static final ConditionKey NEVER = new ConditionKey(-2);
}
