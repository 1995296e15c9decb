package boltlore.order;

import java.time.LocalDate;

/** A finding that someone has looked at and answers for; subject may be empty for all subjects of that kind. */
public record Waiver(String finding, String subject, String who, LocalDate when, String why) {}
