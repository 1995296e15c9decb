package boltlore.resolution.rules.facts;

/**
 * A stage, said as a fact: all lines that the order leaves out have been stated. Which brackets are unused the rules have
 * to say first, from all lines that are called for; nothing joins the kit before only to be withdrawn.
 */
public record OmissionsStageDone() {}
