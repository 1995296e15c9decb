package boltlore.report;

/**
 * Words above what follows.
 *
 * @param look {@link Look#TITLE} for the page, {@link Look#HEADING} for a part of it
 */
public record Heading(String text, Look look) implements Block {

    @Override
    public <R> R as(Cases<R> cases) {
        return cases.heading(this);
    }
}
