package boltlore.book;

import java.time.Instant;
import java.time.LocalDate;

/**
 * Who does something, where and when, as the desk says it.
 *
 * @param at what the desk's clock says
 * @param today the calendar day at the desk
 * @param desk machine or place
 * @param name the person's name, which goes no further than the table of persons
 */
public record By(Instant at, LocalDate today, String desk, String name) {}
