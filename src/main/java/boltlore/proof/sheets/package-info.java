/** What the engineer gets of a proof: a workbook with the defects, the proved kinds and what is left. Proves nothing. */
@NullMarked
package boltlore.proof.sheets;

import org.jspecify.annotations.NullMarked;
