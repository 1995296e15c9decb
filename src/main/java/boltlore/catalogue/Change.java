package boltlore.catalogue;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One entry in the history of a part or a line.
 *
 * @param revision of the part that it led to; null of a line, which has none
 * @param says what changed
 * @param because why
 * @param approvedBy who answers for it
 */
public record Change(@Nullable String revision, LocalDate date, String says, String because, String approvedBy) {}
