package boltlore.book;

import java.util.List;
import java.util.Locale;

/** Where an order stands. */
public enum OrderState {
    /** May be partial, and may be changed as often as one likes. */
    DRAFT,
    /** The customer has a quotation; an earlier version of it stays readable. */
    QUOTED,
    /** Confirmed: choices, catalogue, kit and price are frozen, and change by a change order only. */
    ORDERED,
    IN_WORK,
    TESTED,
    SHIPPED,
    /** The customer did not order. */
    LOST,
    /** Ordered, and given up afterwards. */
    CANCELLED;

    /** As it is written and said: 'in work'. */
    public String written() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public static final List<OrderState> ALL = List.of(values());

    /** Where an order may go from here by nothing more than saying so. */
    public List<OrderState> next() {
        return switch (this) {
            case DRAFT, QUOTED -> List.of(LOST);
            case ORDERED -> List.of(IN_WORK, CANCELLED);
            case IN_WORK -> List.of(TESTED, CANCELLED);
            // A vehicle that fails goes back to work.
            case TESTED -> List.of(SHIPPED, IN_WORK, CANCELLED);
            case LOST -> List.of(DRAFT);
            case SHIPPED, CANCELLED -> List.of();
        };
    }

    /** Whether choices may still be changed. */
    public boolean open() {
        return this == DRAFT || this == QUOTED;
    }

    /** Whether the workshop owes it: its kit is frozen and has not left. */
    public boolean owed() {
        return this == ORDERED || this == IN_WORK || this == TESTED;
    }

    /** Whether the kit is frozen. */
    public boolean frozen() {
        return owed() || this == SHIPPED;
    }
}
