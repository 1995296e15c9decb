package boltlore.json;

import java.util.function.Function;

/**
 * What a value must look like. Readers ask for each key by the shape of its value, and the schemas that help an editor are
 * drawn from what they ask: so neither can know a key or a bound that the other does not.
 */
public sealed interface Shape
        permits TextShape, Range, Allowed, Shape.Plain, Shape.Whole, Shape.ListOf, Shape.Read, Shape.Named {

    /** Shapes without anything to set. */
    enum Plain implements Shape {
        TEXT,
        TRUTH,
        DATE,
        /** English, or texts by language. */
        WORDING,
        /** Read by itself, and not said in a schema. */
        ANY
    }

    /** A number without a fraction. */
    record Whole(long least, long most) implements Shape {}

    /**
     * A list.
     *
     * @param some whether it must hold at least one item
     * @param once whether each item may stand in it once only
     */
    record ListOf(Shape items, boolean some, boolean once) implements Shape {}

    /** An object whose keys are asked for while it is read. */
    record Read(Function<ObjectReader, ?> reading) implements Shape {}

    /** What has a language of its own, by the name under which the common schema holds it. */
    record Named(String name) implements Shape {}
}
