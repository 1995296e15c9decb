package boltlore.catalogue;

import boltlore.measure.Wording;
import java.util.List;

/**
 * Tests that are made together.
 *
 * @param before who may do it, and what must be so before it begins
 * @param cautions codes of the workshop's cautions
 */
public record TestGroup(String name, Wording says, Wording before, List<String> cautions, List<KitTest> tests) {}
