package boltlore.bring;

/**
 * Something about a list that a person must know.
 *
 * @param at sheet and cell, such as {@code Body!C7}
 * @param row row of the sheet, from 1, or 0 where it is about a column or a whole table
 * @param open whether the list cannot be brought in before somebody has answered
 * @param says what is found, in a sentence
 * @param suggests the answer that is likely, or empty
 */
public record Doubt(String at, int row, boolean open, String says, String suggests) {}
