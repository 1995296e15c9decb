package boltlore.book;

/**
 * Where an order stands now.
 *
 * @param customer key of the person
 * @param due day as 2026-06-19, or empty
 * @param draft hash of the order as it was last taken down
 * @param version of the last quotation, 0 before the first
 * @param confirmed version that the customer confirmed, or 0
 * @param kit hash of the kit that was last quoted, or of the frozen one; empty before the first quotation
 * @param resolved hash of the kit that catalogue and order give: the kit without what was added in service
 * @param catalogue hash of the catalogue behind that kit, or empty
 */
public record OrderStanding(
        String name,
        String family,
        OrderState state,
        String customer,
        String partner,
        String due,
        String draft,
        int version,
        int confirmed,
        String kit,
        String resolved,
        String catalogue) {}
