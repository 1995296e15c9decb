package boltlore.catalogue;

import boltlore.measure.Party;

/**
 * A partner workshop with the language of its papers.
 *
 * @param consignee where its kits go, and who pays for them; unknown where nobody has said
 */
public record Partner(String name, String says, String language, Party consignee) {}
